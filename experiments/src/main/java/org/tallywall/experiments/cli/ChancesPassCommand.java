package org.tallywall.experiments.cli;

import java.util.concurrent.Callable;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.chances.words.DealWords;
import org.tallywall.experiments.chances.words.PassedWords;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A wanted tile among those passed. */
@Command(
    name = "pass",
    description = "The chance that a tile you want is among three passed to you, picked at random.",
    footer = {
      "Examples:",
      "  tallywall chances pass --wanted 4",
      "  tallywall chances pass --wanted 1..12 --jokers 2"
    })
final class ChancesPassCommand implements Callable<Integer> {
  private static final int MOST_PASSED = 3;

  private final Console console;

  @Option(
      names = "--wanted",
      required = true,
      converter = NumberRange.Reader.class,
      paramLabel = "N",
      description = "How many of the tiles that you have not seen you want, jokers apart.")
  private NumberRange wanted;

  @Option(
      names = "--tiles",
      paramLabel = "N",
      defaultValue = "3",
      description = "How many are passed to you; ${DEFAULT-VALUE} unless given.")
  private Integer passed;

  @Option(
      names = "--jokers",
      paramLabel = "N",
      defaultValue = "0",
      description = "Jokers on your own rack; ${DEFAULT-VALUE} unless given.")
  private Integer jokers;

  @Option(names = "--east", description = "You are East and hold 14 tiles.")
  private boolean east;

  @Mixin private ChancePapers papers;

  ChancesPassCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    TableRules rules = papers.rules();
    int rack = east ? DealWords.EAST : DealWords.DEAL;
    if (jokers > Math.min(rack, rules.tiles().jokers())) {
      throw new WrongInputException(
          "--jokers takes 0 to %s, not %s"
              .formatted(Math.min(rack, rules.tiles().jokers()), jokers));
    } else if (passed < 1 || passed > MOST_PASSED) {
      throw new WrongInputException("--tiles takes 1 to 3, not " + passed);
    }
    int others = rules.charleston().jokersMayPass() ? 0 : rules.tiles().jokers() - jokers;
    int candidates = rules.tiles().size() - rack - others;
    if (wanted.lowest() < 1 || wanted.highest() > candidates) {
      throw new WrongInputException(
          "--wanted takes 1 to %s, the tiles that may come, not %s"
              .formatted(candidates, wanted.lowest() < 1 ? wanted.lowest() : wanted.highest()));
    }
    PassedWords words = new PassedWords(candidates, passed, which(rules, rack, others, candidates));
    papers.give(
        wanted.several() ? words.range(wanted.values()) : words.one(wanted.lowest()), console);
    return Program.DONE;
  }

  private static String which(TableRules rules, int rack, int others, int candidates) {
    return "%s tiles may come: all %s of the set but your own %s%s."
        .formatted(
            candidates,
            rules.tiles().size(),
            rack,
            others == 0
                ? ""
                : " and the %s that you do not hold, which nobody may pass"
                    .formatted(Words.count(others, "joker", "jokers")));
  }
}
