package org.tallywall.experiments.chances.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.chances.Waiting;
import org.tallywall.experiments.chances.Wall;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.words.Listed;

/** Will a tile that you wait for come while the wall lasts? */
public final class WaitWords {
  private static final String STEM = "wait";
  private static final String TITLE = "Will a tile you wait for come in time?";
  private static final String TABLE = "The chance that one comes from the wall";
  private static final Column YOU =
      Column.rate("you", "share of cases", "The chance that you draw one yourself.")
          .headed("you draw one");
  private static final Column ANYBODY =
      Column.rate("anybody", "share of cases", "The chance that one lies in the wall.")
          .headed("anybody draws one");

  private final List<String> tiles;
  private final boolean byFour;

  /**
   * Begins an answer.
   *
   * @param tiles a sentence for each kind that is waited for, such as "5b: 2 of 4 unseen"; none
   *     where the tiles have no names
   * @param byFour whether your draws are the wall divided by four
   */
  public WaitWords(List<String> tiles, boolean byFour) {
    this.tiles = List.copyOf(tiles);
    this.byFour = byFour;
  }

  /**
   * Answers for one position.
   *
   * @param wait the position
   * @return the answer
   */
  public Told one(Waiting wait) {
    String headline =
        wait.outs() == 0
            ? "Every tile that you wait for has been seen, so none can come."
            : "You wait for %s: with %s in the wall and %s left, the chance to draw one yourself is %s."
                .formatted(
                    unseen(wait),
                    Words.count(wait.wall(), "tile", "tiles"),
                    Words.count(wait.draws(), "draw", "draws"),
                    Percent.pictured(wait.youDraw()));
    List<String> more = new ArrayList<>();
    more.add(
        "The chance that anybody draws one before the wall runs out, you included, is %s."
            .formatted(Percent.pictured(wait.anybodyDraws())));
    if (!tiles.isEmpty()) {
      more.add("Still unseen are " + Listed.and(tiles) + ".");
    }
    if (byFour) {
      more.add(
          "Your draws are the wall divided by four: "
              + WallWords.left(new Wall(wait.wall()))
              + ".");
    }
    Table table = range(List.of(wait), false, List.of("outs", "wall", "draws")).table();
    return new Told(TITLE, headline, more, Told.Tables.of(table), Optional.empty(), how(wait));
  }

  /**
   * Answers for several positions that differ in the wall, or in the tiles that are waited for.
   *
   * @param waits the positions, two or more, from the lowest number to the highest
   * @return the answer
   */
  public Told range(List<Waiting> waits) {
    Waiting first = waits.get(0);
    Waiting last = waits.get(waits.size() - 1);
    boolean walls = first.wall() != last.wall();
    String headline =
        walls
            ? "You wait for %s: the chance to draw one yourself is %s with %s in the wall and %s with %s."
                .formatted(
                    unseen(first),
                    Percent.of(first.youDraw()),
                    Words.count(first.wall(), "tile", "tiles"),
                    Percent.of(last.youDraw()),
                    last.wall())
            : "With %s in the wall and %s left, the chance to draw a tile you wait for is %s if %s unseen and %s if %s."
                .formatted(
                    Words.count(first.wall(), "tile", "tiles"),
                    Words.count(first.draws(), "draw", "draws"),
                    Percent.of(first.youDraw()),
                    first.outs() == 1 ? "1 is" : first.outs() + " are",
                    Percent.of(last.youDraw()),
                    last.outs() + " are");
    List<String> more = new ArrayList<>();
    if (!tiles.isEmpty()) {
      more.add("Still unseen are " + Listed.and(tiles) + ".");
    }
    if (byFour) {
      more.add(
          "Your draws are the wall divided by four, rounded down"
              + (waits.stream().anyMatch(wait -> wait.wall() % Wall.PLAYERS != 0) && walls
                  ? ", so that the chance jumps at every fourth tile."
                  : "."));
    }
    OverRange every = range(waits, walls, List.of("outs", "wall", "draws"));
    OverRange range = range(waits, walls, walls ? List.of("wall", "draws") : List.of("outs"));
    return new Told(
        TITLE,
        headline,
        more,
        new Told.Tables(range.table(), every.table()),
        range.chart(note(first, walls)),
        how(first));
  }

  /** What stays the same along the chart. */
  private String note(Waiting first, boolean walls) {
    return "%s; %s hidden in other racks."
        .formatted(
            walls
                ? unseen(first) + " to wait for"
                : "%s and %s"
                    .formatted(
                        Words.count(first.wall(), "tile in the wall", "tiles in the wall"),
                        Words.count(first.draws(), "draw left to you", "draws left to you")),
            Words.count(first.hidden(), "tile", "tiles"));
  }

  /** Rows with some of the numbers, what differs in front. */
  private static OverRange range(List<Waiting> waits, boolean walls, List<String> shown) {
    List<String> numbers = new ArrayList<>(shown);
    if (walls) {
      numbers.remove("wall");
      numbers.add(0, "wall");
    }
    List<Column> columns = new ArrayList<>();
    numbers.forEach(name -> columns.add(column(name)));
    columns.addAll(List.of(YOU, ANYBODY));
    List<List<Cell>> rows = new ArrayList<>();
    for (Waiting wait : waits) {
      rows.add(row(wait, numbers));
    }
    return new OverRange(
        STEM,
        TABLE,
        new Axis(walls ? "tiles in the wall" : "unseen tiles you wait for", ""),
        new Axis("chance", "in 100"),
        List.of(YOU.name(), ANYBODY.name()),
        columns,
        rows);
  }

  private static String unseen(Waiting wait) {
    return Words.count(wait.outs(), "unseen tile", "unseen tiles");
  }

  private static Column column(String name) {
    return switch (name) {
      case "outs" ->
          Column.integer(name, "tiles", "Unseen tiles that you wait for.")
              .headed("unseen tiles you wait for");
      case "wall" ->
          Column.integer(name, "tiles", "Tiles left in the wall.").headed("tiles in the wall");
      default -> Column.integer(name, "draws", "Draws left to you.").headed("your draws");
    };
  }

  private static List<Cell> row(Waiting wait, List<String> numbers) {
    List<Cell> row = new ArrayList<>();
    for (String name : numbers) {
      row.add(
          Cell.whole(
              switch (name) {
                case "outs" -> wait.outs();
                case "wall" -> wait.wall();
                default -> wait.draws();
              }));
    }
    row.add(Cell.decimal(wait.youDraw()));
    row.add(Cell.decimal(wait.anybodyDraws()));
    return row;
  }

  private static How how(Waiting wait) {
    return new How(
        List.of(
            "you: 1 \u2212 C(n \u2212 m, d) / C(n, d)",
            "anybody: 1 \u2212 C(n \u2212 m, w) / C(n, w)"),
        "Here n = the unseen tiles: those in the wall and %s in the racks of the others; m = those"
                .formatted(wait.hidden())
            + " you wait for, d = your draws, w = the tiles in the wall. "
            + How.CHOOSE,
        How.HYPERGEOMETRIC,
        List.of(
            How.ALIKE,
            "Draws count alone: a tile that you call from a discard comes on top, and whoever draws"
                + " one may keep it."));
  }
}
