package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.sheet.Choice;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.experiments.ask.Ranking;
import org.tallywall.experiments.ask.ReasonedMove;
import org.tallywall.experiments.ask.SceneAnswers;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.guide.SheetToFill;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.story.JudgmentWords;
import org.tallywall.experiments.story.ReasonWords;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.story.TypedTiles;
import org.tallywall.experiments.words.Words;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.habit.Weighed;
import org.tallywall.strategies.jar.JarTrust;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts positions to a player. */
@Command(
    name = "ask",
    description = "Asks a player what to do in a position that you typed, and why.",
    footer = {
      "A position, the way you would type it:",
      "  seat 0",
      "  moment turn",
      "  wall 80",
      "  rack 555777b 899c 6688d E",
      "  exposed 1 66dJ",
      "  discards 1238b 12345c 59d SS R0 FF",
      "  expect discard E",
      "\"expect\" and \"never\" lines say what is right; the command ends with 1 if they do not hold.",
      "Scenes to try: scenes/heron-reach, with its card beside them, and scenes/saltmarsh-quay for"
          + " the card of the demo, cards/saltmarsh-quay.json."
    })
final class AskCommand implements Callable<Integer> {
  /** How many choices are ranked. */
  private static final int RANKED = 5;

  private final Console console;
  private ReasonWords words;
  private JudgmentWords judgment;

  @Parameters(
      arity = "0..*",
      paramLabel = "SHEET",
      description = "The position's file; - reads it from standard input.")
  private List<Path> sheets;

  @Option(
      names = "--new",
      completionCandidates = Candidates.OfQuestions.class,
      paramLabel = "QUESTION",
      description =
          "Prints a position to fill in, with a comment on every line, and asks nobody:"
              + " ${COMPLETION-CANDIDATES}.")
  private String toFill;

  @Option(
      names = "--card",
      paramLabel = "FILE",
      description = "The card file; card.json beside the position unless given.")
  private Path card;

  @Option(
      names = "--player",
      completionCandidates = Candidates.OfPlayers.class,
      paramLabel = "NAME",
      defaultValue = "watchful",
      description =
          "Who is asked: a player's name, or a .json file as a study would write it;"
              + " ${DEFAULT-VALUE} unless given.")
  private String player;

  @Option(
      names = "--seeds",
      paramLabel = "NUMBER",
      defaultValue = "20",
      description = "How many times to ask, each with its own seed; ${DEFAULT-VALUE} unless given.")
  private int seeds;

  @Option(names = "--rules", paramLabel = "FILE", description = "A file of table rules.")
  private Path rules;

  @Mixin private Roster roster;

  @Mixin private Trust trust;

  AskCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (toFill != null) {
      console.out().print(SheetToFill.of(toFill).text());
      return Program.DONE;
    } else if (sheets == null) {
      throw new WrongInputException(
          "name the position's file; tallywall ask --new turn prints one to fill in");
    }
    if (seeds < 1 || seeds > 10_000) {
      throw new WrongInputException("--seeds takes a number from 1 to 10,000, not " + seeds);
    }
    SheetFiles files = new SheetFiles(sheets, card, console.in());
    TableSetup setup = files.setup(rules);
    PlayerSpec spec =
        PlayerWord.read(
            player,
            roster.catalog(JarTrust.ALL),
            roster.catalog(trust.named()),
            setup.hands().card());
    HiddenTiles.refuseWhoSees(spec, "ask another player");
    List<PositionSheet> read = files.read(setup);
    words = new ReasonWords(setup.hands().card(), SeatNames.BY_NUMBER, new TypedTiles());
    judgment = new JudgmentWords(new TypedTiles(), line -> setup.hands().line(line).id());
    int right = 0;
    for (int at = 0; at < read.size(); at++) {
      if (at > 0) {
        console.say("");
      }
      right += ask(sheets.get(at), read.get(at), spec) ? 1 : 0;
    }
    if (read.size() > 1) {
      console.say("");
      console.say(right + " of " + read.size() + " scenes");
    }
    return right == read.size() ? Program.DONE : Program.FAILED;
  }

  private boolean ask(Path file, PositionSheet sheet, PlayerSpec spec) {
    SceneAnswers answers =
        asked(spec, pulse -> SceneAnswers.of(sheet, () -> pulse.watched(spec.make(), 0), seeds));
    console.say(sheet.scene().isEmpty() ? file.toString() : sheet.scene());
    wrap("  " + AskedTiles.of(sheet.view()));
    if (sheet.discardsLeftOut() > 0) {
      wrap(
          "The sheet leaves out "
              + Words.count(sheet.discardsLeftOut(), "discard", "discards")
              + "; the player counts them as unseen.");
    }
    answers
        .counts()
        .forEach(
            (answer, count) ->
                wrap(spec.type().id() + ": " + SceneAnswers.text(answer) + of(count)));
    for (ReasonedMove move :
        asked(
            spec,
            pulse -> ReasonedMove.of(sheet, spec.make(), player -> pulse.watched(player, 0), 0))) {
      if (!move.reasons().isEmpty()) {
        wrap("    " + move.move().text() + ": " + words.text(move.reasons()));
      }
    }
    rank(asked(spec, pulse -> Ranking.of(sheet, spec.make(), RANKED)));
    boolean expected = true;
    if (!sheet.expect().isEmpty()) {
      expected = answers.expected() == answers.seeds();
      wrap(
          "  expected: "
              + String.join(", or ", sheet.expect().stream().map(Choice::text).toList())
              + ": "
              + (expected ? "yes" : "no" + held(answers.expected())));
    }
    for (Choice never : sheet.never()) {
      int gave = answers.gave(never);
      wrap("  never: " + never.text() + ": " + (gave == 0 ? "kept" : "not kept" + of(gave)));
    }
    if (!sheet.because().isEmpty()) {
      wrap("  because " + sheet.because());
    }
    return expected && answers.ruledOut() == 0;
  }

  /** What the player thinks of its best few choices. */
  private void rank(Ranking ranking) {
    if (ranking.choices().size() > 1) {
      boolean risks = ranking.choices().stream().anyMatch(Weighed::read);
      wrap(
          "  "
              + ranking.what()
              + ", best first, "
              + (risks ? "weighing both numbers, " : "")
              + "by its own judgment and not by measured games (worth: the chance of"
              + " the hands it has in mind times what they pay):");
      ranking.choices().forEach(one -> wrap("    " + judgment.ranked(one)));
    }
  }

  private static <T> T asked(PlayerSpec spec, Function<Pulse, T> work) {
    return PatientAsk.ask("the player \"" + spec.type().id() + "\"", work);
  }

  /** With how many seeds something came out, where not with all. */
  private String of(int count) {
    return count == seeds ? "" : " (with " + count + " of " + seeds + " seeds)";
  }

  private String held(int count) {
    return count == 0 ? "" : ", with " + count + " of " + seeds + " seeds only";
  }

  private void wrap(String text) {
    console.sayWrapped(text);
  }
}
