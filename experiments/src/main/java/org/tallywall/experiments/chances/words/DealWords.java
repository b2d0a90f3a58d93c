package org.tallywall.experiments.chances.words;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.tile.TileSet;
import org.tallywall.experiments.chances.Counted;
import org.tallywall.experiments.chances.KindsHeld;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.words.Listed;

/**
 * What is dealt to you?
 *
 * @param what what is counted
 * @param set the tiles on the table
 * @param least how many there are to be at least, 1 to {@code what.most(set)}
 */
public record DealWords(Dealt what, TileSet set, int least) {
  /** The tiles of a deal. */
  public static final int DEAL = 13;

  /** The tiles of East's deal. */
  public static final int EAST = 14;

  private static final int SIDE_BY_SIDE = 2;

  /**
   * Answers for some numbers of tiles.
   *
   * @param tiles how many tiles are dealt, one number or more, from the lowest to the highest; each
   *     1 to {@code set.size()}
   * @return the answer: every count for one or two numbers, else a row for each number
   */
  public Told of(List<Integer> tiles) {
    return tiles.size() <= SIDE_BY_SIDE ? counts(tiles) : range(tiles);
  }

  private Told counts(List<Integer> tiles) {
    CountTables tables =
        new CountTables(
            what.stem(),
            what.tableTitle(),
            what == Dealt.COPIES ? "tiles of the kind" : what.several(),
            "of 100 deals",
            tiles.stream().map(this::sum).toList());
    return new Told(
        what.title(),
        headline(tiles),
        more(tiles),
        tables.tables(),
        tables.bars(what.inTheSet(set)),
        how());
  }

  private How how() {
    return what.how(set);
  }

  private CountTables.Sum sum(int tiles) {
    String name = tiles == EAST ? "East, 14 tiles" : tiles + " tiles";
    return new CountTables.Sum(
        tiles == 1 ? "1 tile" : name, Integer.toString(tiles), what.in(set, tiles));
  }

  private String headline(List<Integer> tiles) {
    int first = tiles.get(0);
    int last = tiles.get(tiles.size() - 1);
    String wanted = what.atLeast(least);
    if (tiles.equals(List.of(DEAL, EAST))) {
      return "The chance to be dealt %s is %s; for East, who gets 14 tiles, it is %s."
          .formatted(wanted, pictured(DEAL), pictured(EAST));
    } else if (tiles.equals(List.of(DEAL))) {
      return "The chance to be dealt %s is %s.".formatted(wanted, pictured(DEAL));
    } else if (tiles.equals(List.of(EAST))) {
      return "For East, who gets 14 tiles, the chance to be dealt %s is %s."
          .formatted(wanted, pictured(EAST));
    } else if (tiles.size() == 1) {
      return "The chance of %s among %s out of the whole set is %s."
          .formatted(wanted, tiles(first), pictured(first));
    }
    return "The chance of %s is %s among %s out of the whole set and %s among %s."
        .formatted(wanted, pictured(first), tiles(first), pictured(last), last);
  }

  private static String tiles(int number) {
    return number == 1 ? "1 tile" : number + " tiles";
  }

  private String pictured(int tiles) {
    return Percent.pictured(what.in(set, tiles).atLeast(least));
  }

  private List<String> more(List<Integer> tiles) {
    List<String> averages = new ArrayList<>();
    for (int number : tiles) {
      String average = Percent.average(what.in(set, number).average());
      averages.add(
          (averages.isEmpty() ? what.average(average) : average) + among(number, averages));
    }
    List<String> more = new ArrayList<>();
    more.add("The average is " + Listed.and(averages) + ".");
    if (what == Dealt.PAIRS) {
      more.add(
          "The chance of three alike or more is %s; of four alike it is %s."
              .formatted(alike(tiles, 3), alike(tiles, 4)));
    }
    return more;
  }

  /** Three or four alike, which count as a pair above. */
  private String alike(List<Integer> tiles, int alike) {
    List<String> said = new ArrayList<>();
    for (int number : tiles) {
      double chance = new KindsHeld(set, number, alike).atLeast(1);
      said.add(Percent.of(chance) + among(number, said));
    }
    return Listed.and(said);
  }

  /** Where the number is; the word for tiles is said once. */
  private static String among(int number, List<String> before) {
    return " among " + (before.isEmpty() ? tiles(number) : number);
  }

  private Told range(List<Integer> tiles) {
    List<List<Cell>> rows = new ArrayList<>();
    for (int number : tiles) {
      Counted sum = what.in(set, number);
      rows.add(
          List.of(
              Cell.whole(number), Cell.decimal(sum.atLeast(least)), Cell.decimal(sum.average())));
    }
    String chance = "chance of at least " + Words.spelled(least);
    OverRange range =
        new OverRange(
            what.stem(),
            "The chance of %s, by tiles dealt".formatted(what.atLeast(least)),
            new Axis("tiles out of the whole set", ""),
            new Axis(chance, "in 100"),
            List.of("chance"),
            List.of(
                Column.integer("tiles", "tiles", "How many tiles are dealt.").headed("tiles"),
                Column.rate("chance", "share of deals", "The chance of so many or more.")
                    .headed(chance),
                Column.decimal("average", what.several(), "How many there are on average.")
                    .headed("on average")),
            rows);
    return new Told(
        what.title(),
        headline(tiles),
        List.of(),
        Told.Tables.of(range.table()),
        range.chart(what.inTheSet(set)),
        how());
  }
}
