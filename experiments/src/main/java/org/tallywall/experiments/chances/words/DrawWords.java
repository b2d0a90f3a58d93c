package org.tallywall.experiments.chances.words;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.experiments.chances.TilesDrawn;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;

/** Will some of the wanted tiles come in so many draws? */
public final class DrawWords {
  private static final String STEM = "draw";

  /** Which of the three numbers goes over a range. */
  public enum Over {
    /** The tiles that are wanted. */
    WANTED("wanted", "tiles wanted"),
    /** The draws. */
    DRAWS("draws", "draws"),
    /** The tiles that nobody has seen. */
    UNSEEN("unseen", "unseen tiles");

    private final String column;
    private final String heading;

    Over(String column, String heading) {
      this.column = column;
      this.heading = heading;
    }
  }

  /**
   * Three numbers of a sum.
   *
   * @param unseen the tiles that may come, 1 or more
   * @param wanted how many of them are wanted, 0 to {@code unseen}
   * @param draws how many come, 0 to {@code unseen}
   */
  public record Numbers(int unseen, int wanted, int draws) {
    TilesDrawn sum() {
      return new TilesDrawn(unseen, wanted, draws);
    }
  }

  private DrawWords() {}

  /**
   * Answers for one set of numbers.
   *
   * @param numbers the numbers
   * @param least how many wanted tiles are to come at least, 1 or more
   * @return the answer
   */
  public static Told one(Numbers numbers, int least) {
    TilesDrawn sum = numbers.sum();
    String headline =
        "If you want %s of %s and draw %s, the chance that %s is %s."
            .formatted(
                numbers.wanted(),
                unseen(numbers),
                numbers.draws(),
                numbers.wanted() == 1 ? "it comes" : "at least " + ofThem(least),
                Percent.pictured(sum.atLeast(least)));
    List<String> more =
        numbers.wanted() == 1
            ? List.of()
            : List.of("On average %s of them come.".formatted(Percent.average(sum.average())));
    CountTables tables =
        new CountTables(
            STEM,
            "How many of the wanted tiles come",
            "tiles that come",
            "of 100 such cases",
            List.of(new CountTables.Sum(draws(numbers), "", sum)));
    return new Told(
        "Will a tile you want come?",
        headline,
        more,
        tables.tables(),
        tables.bars("%s wanted of %s.".formatted(numbers.wanted(), unseen(numbers))),
        how(
            "Here n = %s unseen tiles, m = %s wanted, d = %s drawn."
                .formatted(numbers.unseen(), numbers.wanted(), numbers.draws())));
  }

  /**
   * Answers over a range.
   *
   * @param over which number goes over the range
   * @param all the numbers of each sum, two or more, from the lowest to the highest
   * @param least how many wanted tiles are to come at least, 1 or more
   * @return the answer
   */
  public static Told range(Over over, List<Numbers> all, int least) {
    Numbers first = all.get(0);
    Numbers last = all.get(all.size() - 1);
    String come =
        over == Over.WANTED
            ? "%s that you want %s"
                .formatted(
                    least == 1 ? "one tile" : Words.spelled(least) + " tiles",
                    least == 1 ? "comes" : "come")
            : ofThem(least);
    String headline =
        "%s, the chance that at least %s is %s with %s and %s with %s."
            .formatted(
                given(over, first),
                come,
                Percent.of(first.sum().atLeast(least)),
                with(over, first),
                Percent.of(last.sum().atLeast(least)),
                number(over, last));
    List<List<Cell>> rows = new ArrayList<>();
    for (Numbers one : all) {
      rows.add(
          List.of(
              Cell.whole(number(over, one)),
              Cell.decimal(one.sum().atLeast(least)),
              Cell.decimal(one.sum().average())));
    }
    OverRange range =
        new OverRange(
            STEM,
            "The chance that at least %s, by %s".formatted(comes(least), over.heading),
            new Axis(over.heading, ""),
            new Axis("chance that at least " + comes(least), "in 100"),
            List.of("chance"),
            List.of(
                Column.integer(over.column, over.heading, "What the rows differ in.")
                    .headed(over.heading),
                Column.rate("chance", "share of cases", "The chance that so many come.")
                    .headed("at least " + comes(least)),
                Column.decimal("average", "tiles", "How many come on average.")
                    .headed("come on average")),
            rows);
    return new Told(
        "Will a tile you want come?",
        headline,
        List.of(),
        Told.Tables.of(range.table()),
        range.chart(note(over, first)),
        how("Here " + letters(over, first) + "."));
  }

  private static How how(String letters) {
    return How.ofDraws(letters, How.ALIKE);
  }

  private static String comes(int least) {
    return least == 1 ? "one comes" : Words.spelled(least) + " come";
  }

  private static String ofThem(int least) {
    return Words.spelled(least) + " of them " + (least == 1 ? "comes" : "come");
  }

  private static String given(Over over, Numbers numbers) {
    String unseen = unseen(numbers);
    return switch (over) {
      case WANTED -> "If you draw %s of %s".formatted(numbers.draws(), unseen);
      case DRAWS -> "If you want %s of %s".formatted(numbers.wanted(), unseen);
      case UNSEEN ->
          "If you want %s and draw %s"
              .formatted(Words.count(numbers.wanted(), "tile", "tiles"), numbers.draws());
    };
  }

  private static String unseen(Numbers numbers) {
    return Words.count(numbers.unseen(), "unseen tile", "unseen tiles");
  }

  /** What stays the same along the chart. */
  private static String note(Over over, Numbers numbers) {
    return switch (over) {
      case WANTED -> "%s of %s.".formatted(draws(numbers), unseen(numbers));
      case DRAWS -> "%s wanted of %s.".formatted(numbers.wanted(), unseen(numbers));
      case UNSEEN -> "%s wanted, %s.".formatted(numbers.wanted(), draws(numbers));
    };
  }

  private static String draws(Numbers numbers) {
    return Words.count(numbers.draws(), "draw", "draws");
  }

  private static String with(Over over, Numbers numbers) {
    return switch (over) {
      case WANTED -> Words.count(numbers.wanted(), "tile wanted", "tiles wanted");
      case DRAWS -> draws(numbers);
      case UNSEEN -> unseen(numbers);
    };
  }

  private static int number(Over over, Numbers numbers) {
    return switch (over) {
      case WANTED -> numbers.wanted();
      case DRAWS -> numbers.draws();
      case UNSEEN -> numbers.unseen();
    };
  }

  private static String letters(Over over, Numbers numbers) {
    List<String> letters = new ArrayList<>();
    letters.add(
        over == Over.UNSEEN
            ? "n goes over the unseen tiles"
            : "n = %s unseen tiles".formatted(numbers.unseen()));
    letters.add(
        over == Over.WANTED
            ? "m goes over the tiles wanted"
            : "m = %s wanted".formatted(numbers.wanted()));
    letters.add(
        over == Over.DRAWS ? "d goes over the draws" : "d = %s drawn".formatted(numbers.draws()));
    return String.join(", ", letters);
  }
}
