package org.tallywall.experiments.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.tallywall.experiments.chances.words.DrawWords;
import org.tallywall.experiments.chances.words.DrawWords.Numbers;
import org.tallywall.experiments.chances.words.DrawWords.Over;
import org.tallywall.experiments.chances.words.Told;
import org.tallywall.experiments.error.WrongInputException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Wanted tiles in some draws. */
@Command(
    name = "draw",
    description = "The chance that at least one tile you want comes in so many draws.",
    footer = {
      "Examples:",
      "  tallywall chances draw --wanted 3 --draws 10 --unseen 60",
      "  tallywall chances draw --wanted 3 --draws 5..20 --unseen 60"
    })
final class ChancesDrawCommand implements Callable<Integer> {
  private final Console console;

  @Option(
      names = "--wanted",
      required = true,
      converter = NumberRange.Reader.class,
      paramLabel = "N",
      description = "How many of the unseen tiles you want.")
  private NumberRange wanted;

  @Option(
      names = "--draws",
      required = true,
      converter = NumberRange.Reader.class,
      paramLabel = "N",
      description = "How many of them are drawn.")
  private NumberRange draws;

  @Option(
      names = "--unseen",
      required = true,
      converter = NumberRange.Reader.class,
      paramLabel = "N",
      description = "How many tiles you have not seen.")
  private NumberRange unseen;

  @Option(
      names = "--at-least",
      paramLabel = "N",
      defaultValue = "1",
      description = "How many of the wanted tiles are to come; ${DEFAULT-VALUE} unless given.")
  private Integer least;

  @Mixin private ChancePapers papers;

  ChancesDrawCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    check(papers.rules().tiles().size());
    Map<Over, NumberRange> several = new EnumMap<>(Over.class);
    Map.of(Over.WANTED, wanted, Over.DRAWS, draws, Over.UNSEEN, unseen)
        .forEach((over, range) -> put(several, over, range));
    if (several.size() > 1) {
      throw new WrongInputException(
          "one range at a time: give one number for all but one of --wanted, --draws, and --unseen");
    }
    papers.give(several.isEmpty() ? one() : range(several.keySet().iterator().next()), console);
    return Program.DONE;
  }

  private static void put(Map<Over, NumberRange> several, Over over, NumberRange range) {
    if (range.several()) {
      several.put(over, range);
    }
  }

  private Told one() {
    return DrawWords.one(new Numbers(unseen.lowest(), wanted.lowest(), draws.lowest()), least);
  }

  private Told range(Over over) {
    List<Numbers> all = new ArrayList<>();
    for (int n : unseen.values()) {
      for (int m : wanted.values()) {
        draws.values().forEach(d -> all.add(new Numbers(n, m, d)));
      }
    }
    return DrawWords.range(over, all, least);
  }

  private void check(int set) {
    if (unseen.lowest() < 1) {
      throw new WrongInputException("--unseen takes 1 or more, or there is nothing to draw");
    } else if (unseen.highest() > set) {
      throw new WrongInputException(
          "--unseen %s is more than the %s tiles of the set".formatted(unseen.highest(), set));
    } else if (wanted.lowest() < 1) {
      throw new WrongInputException("--wanted takes 1 or more");
    } else if (wanted.highest() > unseen.lowest()) {
      throw new WrongInputException(
          "you cannot want %s tiles of %s unseen ones"
              .formatted(wanted.highest(), unseen.lowest()));
    } else if (draws.highest() > unseen.lowest()) {
      throw new WrongInputException(
          "%s draws are more than the %s unseen tiles".formatted(draws.highest(), unseen.lowest()));
    } else if (least < 1 || least > wanted.lowest()) {
      throw new WrongInputException(
          "--at-least takes 1 to %s, as many as you want at most, not %s"
              .formatted(wanted.lowest(), least));
    }
  }
}
