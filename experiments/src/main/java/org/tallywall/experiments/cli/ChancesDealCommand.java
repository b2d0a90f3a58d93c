package org.tallywall.experiments.cli;

import java.util.Locale;
import java.util.concurrent.Callable;
import org.tallywall.core.tile.TileSet;
import org.tallywall.experiments.chances.words.DealWords;
import org.tallywall.experiments.chances.words.Dealt;
import org.tallywall.experiments.error.WrongInputException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.Option;

/** What is dealt: one command for each thing that is counted. */
@Command
final class ChancesDealCommand implements Callable<Integer> {
  private final Console console;
  private final Dealt what;

  @Option(
      names = "--tiles",
      converter = NumberRange.Reader.class,
      paramLabel = "N",
      defaultValue = "13,14",
      description = "How many tiles are dealt; 13 and East's 14 unless given.")
  private NumberRange tiles;

  @Option(
      names = "--at-least",
      paramLabel = "N",
      defaultValue = "1",
      description = "How many there are to be; ${DEFAULT-VALUE} unless given.")
  private Integer least;

  @Mixin private ChancePapers papers;

  private ChancesDealCommand(Console console, Dealt what) {
    this.console = console;
    this.what = what;
  }

  /** The command that counts something. */
  static CommandLine of(Console console, Dealt what) {
    CommandLine command = new CommandLine(new ChancesDealCommand(console, what));
    command.setCommandName(what.name().toLowerCase(Locale.ROOT));
    UsageMessageSpec usage = command.getCommandSpec().usageMessage();
    String name = command.getCommandName();
    usage.description(
        switch (what) {
          case JOKERS -> "How many jokers are dealt to you.";
          case FLOWERS -> "How many flowers are dealt to you.";
          case COPIES -> "How many tiles of one kind are dealt to you, such as of 5 bam.";
          case PAIRS -> "How many pairs are dealt to you, three or four alike counted as one.";
        });
    usage.footer(
        "Examples:",
        "  tallywall chances " + name,
        "  tallywall chances " + name + " --at-least 2",
        "  tallywall chances " + name + " --tiles 13..40");
    return command;
  }

  @Override
  public Integer call() {
    TileSet set = papers.rules().tiles();
    if (tiles.lowest() < 1 || tiles.highest() > set.size()) {
      throw new WrongInputException(
          "--tiles takes 1 to %s, the tiles of the set, not %s"
              .formatted(set.size(), tiles.lowest() < 1 ? tiles.lowest() : tiles.highest()));
    }
    int most = what.most(set);
    if (most == 0) {
      throw new WrongInputException("by these rules there are no " + what.several());
    } else if (least < 1 || least > most) {
      throw new WrongInputException(
          "--at-least takes 1 to %s, as there are no more %s, not %s"
              .formatted(most, what == Dealt.PAIRS ? "kinds" : what.several(), least));
    }
    papers.give(new DealWords(what, set, least).of(tiles.values()), console);
    return Program.DONE;
  }
}
