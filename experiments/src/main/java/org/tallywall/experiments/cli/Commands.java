package org.tallywall.experiments.cli;

import org.tallywall.experiments.chances.words.Dealt;
import picocli.CommandLine;

/** The list of all commands, in the order in which the help shows them. */
final class Commands {
  private Commands() {}

  static CommandLine all(Console console) {
    CommandLine root = new CommandLine(new RootCommand(console));
    root.addSubcommand(card(console));
    root.addSubcommand(study(console));
    root.addSubcommand(new RunCommand(console));
    root.addSubcommand(new ReportCommand(console));
    root.addSubcommand(new VerifyCommand(console));
    root.addSubcommand(new GameCommand(console));
    root.addSubcommand(new ReplayCommand(console));
    root.addSubcommand(new MannersCommand(console));
    root.addSubcommand(new PlayersCommand(console));
    root.addSubcommand(new RulesCommand(console));
    root.addSubcommand(new RackCommand(console));
    root.addSubcommand(new AskCommand(console));
    root.addSubcommand(new ReviewCommand(console));
    root.addSubcommand(new SchoolCommand(console));
    root.addSubcommand(new ReadCommand(console));
    root.addSubcommand(new ClubCommand(console));
    root.addSubcommand(chances(console));
    root.addSubcommand(new CompletionCommand(console));
    root.addSubcommand(new HelpCommand(console));
    return root;
  }

  private static CommandLine card(Console console) {
    CommandLine card = new CommandLine(new CardCommand());
    card.addSubcommand(new CardCheckCommand(console));
    card.addSubcommand(new CardReadCommand(console));
    card.addSubcommand(new CardExpandCommand(console));
    card.addSubcommand(new CardCompareCommand(console));
    card.addSubcommand(new CardInventCommand(console));
    return card;
  }

  private static CommandLine study(Console console) {
    CommandLine study = new CommandLine(new StudyCommand());
    study.addSubcommand(new StudyNewCommand(console));
    study.addSubcommand(new StudyListCommand(console));
    return study;
  }

  private static CommandLine chances(Console console) {
    CommandLine chances = new CommandLine(new ChancesCommand(console));
    for (Dealt what : Dealt.values()) {
      CommandLine deal = ChancesDealCommand.of(console, what);
      chances.addSubcommand(deal.getCommandName(), deal);
    }
    chances.addSubcommand(new ChancesPassCommand(console));
    chances.addSubcommand(new ChancesDrawCommand(console));
    chances.addSubcommand(new ChancesWaitCommand(console));
    chances.addSubcommand(new ChancesDrawsLeftCommand(console));
    return chances;
  }
}
