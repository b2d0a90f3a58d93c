package org.tallywall.experiments.chances.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.chances.Wall;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;

/** How many draws does the wall leave you? */
public final class WallWords {
  private static final String STEM = "draws-left";
  private static final String TITLE = "How many draws are left?";
  private static final List<String> ORDER = List.of("next", "second", "third", "last");

  private WallWords() {}

  /**
   * Answers for one wall, or for several.
   *
   * @param walls the tiles left in each, one or more, from the lowest to the highest
   * @return the answer
   */
  public static Told of(List<Integer> walls) {
    int lowest = walls.get(0);
    int highest = walls.get(walls.size() - 1);
    String headline =
        walls.size() == 1
            ? "With %s in the wall, %s.".formatted(tiles(lowest), left(new Wall(lowest)))
            : "With %s in the wall, %s; with %s, %s."
                .formatted(
                    tiles(highest),
                    left(new Wall(highest)),
                    lowest == 0 ? "none" : lowest,
                    left(new Wall(lowest)));
    List<Column> columns = new ArrayList<>();
    columns.add(
        Column.integer("wall", "tiles", "Tiles left in the wall.").headed("tiles in the wall"));
    for (String place : ORDER) {
      columns.add(
          Column.integer(place, "draws", "Draws left to whoever draws " + place + ".")
              .headed("draws " + place));
    }
    List<List<Cell>> rows = new ArrayList<>();
    for (int tiles : walls) {
      List<Cell> row = new ArrayList<>();
      row.add(Cell.whole(tiles));
      for (int before = 0; before < Wall.PLAYERS; before++) {
        row.add(Cell.whole(new Wall(tiles).drawsAfter(before)));
      }
      rows.add(row);
    }
    OverRange range =
        new OverRange(
            STEM,
            "Draws left, by who draws next",
            new Axis("tiles in the wall", ""),
            new Axis("draws left", ""),
            List.of("next", "last"),
            columns,
            rows);
    return new Told(
        TITLE,
        headline,
        List.of(),
        Told.Tables.of(range.table()),
        walls.size() == 1 ? Optional.empty() : range.chart("If nobody calls."),
        how());
  }

  private static String tiles(int wall) {
    return wall == 0 ? "no tile" : Words.count(wall, "tile", "tiles");
  }

  /** Who has how many draws, in a clause. */
  static String left(Wall wall) {
    int least = wall.byFour();
    int more = wall.tiles() % Wall.PLAYERS;
    if (wall.tiles() == 0) {
      return "nobody has a draw left";
    } else if (more == 0) {
      return "everybody has %s left".formatted(draws(least));
    }
    String others =
        more == 3
            ? "the last has " + few(least)
            : "the other %s have %s".formatted(Words.spelled(4 - more), few(least));
    return more == 1
        ? "whoever draws next has %s left and %s".formatted(draws(least + 1), others)
        : "the next %s to draw have %s left and %s"
            .formatted(Words.spelled(more), draws(least + 1), others);
  }

  private static String draws(int number) {
    return Words.count(number, "draw", "draws");
  }

  private static String few(int number) {
    return number == 0 ? "none" : Integer.toString(number);
  }

  private static How how() {
    return new How(
        List.of(
            "exactly: (w \u2212 b) / 4, rounded up",
            "by the rule of thumb: w / 4, rounded down, which is what whoever draws last has"),
        "Here w = the tiles in the wall, b = how many others draw before her.",
        "counting round the table; the rule of thumb is common practice.",
        List.of(
            "Every tile is drawn in turn. A call gives the turn to another player, so each call"
                + " can cost you a draw or bring you one."));
  }
}
