package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/** The columns of {@code overall.csv}: figures over all games of one fixed table. */
public final class OverallColumns {
  /** The file's name without its ending. */
  public static final String FILE = "overall";

  /** The column {@code figure}. */
  public static final Column FIGURE =
      Column.text(
              "figure",
              "What is counted: \"won\", \"wall-game\", \"void\", \"stopped\" (the passes), \"half-over\" (tiles left when half of all games were over), \"ended\" (games that ended in a part of the wall), \"away-before\" and \"away-after\" (tiles away, mean of the four racks).")
          .filled();

  /** The column {@code part}. */
  public static final Column PART =
      Column.text("part", "The part of the wall, as in 99-76, or the pass; empty for the others.");

  /** The column {@code games}. */
  public static final Column GAMES =
      Column.integer("games", "games", "Games that it was counted in.");

  /** The column {@code unit}. */
  public static final Column UNIT =
      Column.text("unit", "\"share of games\" or \"tiles\".")
          .filled()
          .oneOf("share of games", "tiles");

  /** The column {@code value}. */
  public static final Column VALUE = Column.decimalInterval("value", "as in unit", "The figure.");

  /** The column {@code method}. */
  public static final Column METHOD = Column.text("method", "How the interval was computed.");

  private OverallColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(FIGURE, PART, GAMES, UNIT, VALUE, METHOD);
  }
}
