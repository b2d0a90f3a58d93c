package org.tallywall.experiments.cli;

import java.util.concurrent.Callable;
import org.tallywall.core.play.Deal;
import org.tallywall.experiments.chances.words.WallWords;
import org.tallywall.experiments.error.WrongInputException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Draws left by the wall. */
@Command(
    name = "draws-left",
    description = "How many draws a wall leaves to each player.",
    footer = {
      "Examples:",
      "  tallywall chances draws-left --wall 42",
      "  tallywall chances draws-left --wall 80,60,40,20"
    })
final class ChancesDrawsLeftCommand implements Callable<Integer> {
  private final Console console;

  @Option(
      names = "--wall",
      required = true,
      converter = NumberRange.Reader.class,
      paramLabel = "N",
      description = "How many tiles are left in the wall.")
  private NumberRange wall;

  @Mixin private ChancePapers papers;

  ChancesDrawsLeftCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    checkWall(wall, papers.rules().tiles().size());
    papers.give(WallWords.of(wall.values()), console);
    return Program.DONE;
  }

  /** Refuses a wall that no deal leaves. */
  static void checkWall(NumberRange wall, int set) {
    int most = set - Deal.DEALT;
    if (wall.highest() > most) {
      throw new WrongInputException(
          "--wall takes 0 to %s, as many as a deal leaves, not %s".formatted(most, wall.highest()));
    }
  }
}
