package org.tallywall.experiments.chances.words;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.chances.Waiting;
import org.tallywall.experiments.chances.Wall;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.reports.words.Listed;

/** Will a tile that you wait for come while the wall lasts? */
public final class WaitWords {
  private static final String STEM = "wait";
  private static final String TITLE = "Will a tile you wait for come in time?";
  private static final String TABLE = "The chance that one comes from the wall";
  private static final Column YOU =
      Column.rate("you", "share of cases", "The chance that you draw one yourself.")
          .headed("you draw one");
  private static final Column SOMEBODY =
      Column.rate("somebody", "share of cases", "The chance that one lies in the wall.")
          .headed("somebody draws one, you included");

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
        "The chance that somebody draws one before the wall runs out, you included, is %s."
            .formatted(Percent.pictured(wait.somebodyDraws())));
    if (!tiles.isEmpty()) {
      more.add("Still unseen are " + Listed.and(tiles) + ".");
    }
    if (byFour) {
      more.add(
          "Your draws are the wall divided by four: "
              + WallWords.left(new Wall(wait.wall()))
              + ".");
    }
    TableBuilder table = Table.builder(STEM, TABLE).columns(columns());
    table.row(row(wait));
    return new Told(
        TITLE, headline, more, Told.Tables.of(table.build()), Optional.empty(), how(wait));
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
                    first.wall(),
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
      more.add("Your draws are the wall divided by four, rounded down.");
    }
    List<Column> columns = columns();
    if (walls) {
      Collections.swap(columns, 0, 1);
    }
    List<List<Cell>> rows = new ArrayList<>();
    for (Waiting wait : waits) {
      List<Cell> row = row(wait);
      if (walls) {
        Collections.swap(row, 0, 1);
      }
      rows.add(row);
    }
    OverRange range =
        new OverRange(
            STEM,
            TABLE,
            new Axis(walls ? "tiles in the wall" : "unseen tiles you wait for", ""),
            new Axis("chance", "in 100"),
            List.of(YOU.name(), SOMEBODY.name()),
            columns,
            rows);
    return new Told(
        TITLE, headline, more, Told.Tables.of(range.table()), range.chart(List.of()), how(first));
  }

  private static String unseen(Waiting wait) {
    return Words.count(wait.outs(), "unseen tile", "unseen tiles");
  }

  private static List<Column> columns() {
    return new ArrayList<>(
        List.of(
            Column.integer("outs", "tiles", "Unseen tiles that you wait for.")
                .headed("unseen tiles you wait for"),
            Column.integer("wall", "tiles", "Tiles left in the wall.").headed("tiles in the wall"),
            Column.integer("draws", "draws", "Draws left to you.").headed("your draws"),
            YOU,
            SOMEBODY));
  }

  private static List<Cell> row(Waiting wait) {
    return new ArrayList<>(
        List.of(
            Cell.whole(wait.outs()),
            Cell.whole(wait.wall()),
            Cell.whole(wait.draws()),
            Cell.decimal(wait.youDraw()),
            Cell.decimal(wait.somebodyDraws())));
  }

  private static How how(Waiting wait) {
    return new How(
        List.of(
            "you: 1 \u2212 C(n \u2212 m, d) / C(n, d)",
            "somebody: 1 \u2212 C(n \u2212 m, w) / C(n, w)"),
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
