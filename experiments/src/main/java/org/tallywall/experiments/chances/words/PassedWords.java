package org.tallywall.experiments.chances.words;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.experiments.chances.TilesDrawn;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;

/**
 * Is a wanted tile among those passed to you?
 *
 * @param candidates the tiles that may be passed, 1 or more
 * @param passed how many are passed to you, 1 to 3
 * @param which which tiles may be passed, in a sentence
 */
public record PassedWords(int candidates, int passed, String which) {
  private static final String STEM = "pass";
  private static final String TITLE = "Is a tile you want among those passed to you?";

  /**
   * Answers for one number of wanted tiles.
   *
   * @param wanted how many of the tiles that may be passed are wanted, 0 to {@code candidates}
   * @return the answer
   */
  public Told one(int wanted) {
    TilesDrawn sum = sum(wanted);
    CountTables tables =
        new CountTables(
            STEM,
            "How many of the tiles passed to you are wanted",
            "tiles you want",
            "of 100 such passes",
            List.of(
                new CountTables.Sum(Words.count(wanted, "tile", "tiles") + " wanted", "", sum)));
    return new Told(
        TITLE,
        "If you want %s of the %s that may come, the chance that %s is %s."
            .formatted(
                wanted,
                Words.count(candidates, "tile", "tiles"),
                come(wanted),
                Percent.pictured(sum.atLeast(1))),
        List.of(which),
        tables.tables(),
        tables.bars(note()),
        how("m = %s wanted".formatted(wanted)));
  }

  /**
   * Answers for several numbers of wanted tiles.
   *
   * @param wanted the numbers, two or more, from the lowest to the highest
   * @return the answer
   */
  public Told range(List<Integer> wanted) {
    int first = wanted.get(0);
    int last = wanted.get(wanted.size() - 1);
    List<List<Cell>> rows = new ArrayList<>();
    for (int number : wanted) {
      rows.add(
          List.of(
              Cell.whole(number),
              Cell.decimal(sum(number).atLeast(1)),
              Cell.decimal(sum(number).average())));
    }
    OverRange range =
        new OverRange(
            STEM,
            "The chance that at least one of the tiles passed to you is wanted",
            new Axis("tiles you want, of %s that may come".formatted(candidates), ""),
            new Axis("chance that at least one comes", "in 100"),
            List.of("chance"),
            List.of(
                Column.integer("wanted", "tiles", "How many of the tiles that may come are wanted.")
                    .headed("tiles wanted"),
                Column.rate("chance", "share of passes", "The chance that at least one comes.")
                    .headed("at least one comes"),
                Column.decimal("average", "tiles", "How many come on average.")
                    .headed("come on average")),
            rows);
    return new Told(
        TITLE,
        "The chance that %s is %s with %s and %s with %s."
            .formatted(
                passed == 1
                    ? "the tile passed to you is one you want"
                    : "at least one tile you want is among the %s passed to you"
                        .formatted(Words.spelled(passed)),
                Percent.of(sum(first).atLeast(1)),
                Words.count(first, "tile wanted", "tiles wanted"),
                Percent.of(sum(last).atLeast(1)),
                last),
        List.of(which),
        Told.Tables.of(range.table()),
        range.chart(note()),
        how("m goes over the tiles wanted"));
  }

  private String note() {
    return "%s passed to you at random, out of %s that may come."
        .formatted(Words.count(passed, "tile is", "tiles are"), candidates);
  }

  private TilesDrawn sum(int wanted) {
    return new TilesDrawn(candidates, wanted, passed);
  }

  private String come(int wanted) {
    String few = Words.spelled(passed) + " passed to you";
    if (passed == 1) {
      return "the tile passed to you is " + (wanted == 1 ? "that one" : "one of them");
    }
    return (wanted == 1 ? "it" : "at least one") + " is among the " + few;
  }

  private How how(String wanted) {
    return How.ofDraws(
        "Here n = %s tiles that may come, %s, d = %s passed.".formatted(candidates, wanted, passed),
        "It holds for a pass that is picked at random. People choose what they pass, so that a tile"
            + " you want may come more often than this, or less.");
  }
}
