package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/** The columns of {@code sweep.csv}. */
public final class SweepColumns {
  /** The file's name without its ending. */
  public static final String FILE = "sweep";

  /** The column {@code setting}. */
  public static final Column SETTING = Column.text("setting", "The setting.");

  /** The column {@code value}. */
  public static final Column VALUE = Column.text("value", "Its value.").filled();

  /** The column {@code compared-with}. */
  public static final Column COMPARED_WITH =
      Column.text("compared-with", "\"yes\" for the value that the others are compared with.")
          .filled()
          .oneOf("yes", "no");

  /** The column {@code deals}. */
  public static final Column DEALS = Column.integer("deals", "deals", "Deals played.");

  /** The column {@code win-rate}. */
  public static final Column WIN_RATE =
      Column.rate("win-rate", "share of games", "Games won.").headed("games won in 100");

  /** The column {@code points}. */
  public static final Column POINTS =
      Column.decimal("points", "points per game", "Points a game.").headed("points per 100 games");

  /** The column {@code measure}. */
  public static final Column MEASURE = Column.text("measure", "The primary measure.");

  /** The column {@code difference}. */
  public static final Column DIFFERENCE =
      Column.decimalInterval(
              "difference",
              "points a game or share of games",
              "Difference of the primary measure on the same deals; empty for the value compared with.")
          .headed("difference on the same deals")
          .shownTo(1);

  /** The column {@code method}. */
  public static final Column METHOD = Column.text("method", "How the interval was computed.");

  private SweepColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(
        SETTING, VALUE, COMPARED_WITH, DEALS, WIN_RATE, POINTS, MEASURE, DIFFERENCE, METHOD);
  }
}
