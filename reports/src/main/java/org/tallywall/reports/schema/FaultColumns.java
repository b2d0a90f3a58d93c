package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/** The columns of {@code faults.csv}. */
public final class FaultColumns {
  /** The file's name without its ending. */
  public static final String FILE = "faults";

  /** The column {@code deal}. */
  public static final Column DEAL =
      Column.integer("deal", "number", "The deal, from 0; none of its games is counted.");

  /** The column {@code arm}. */
  public static final Column ARM =
      Column.text("arm", "The way of playing, where the study has several.");

  /** The column {@code seat}. */
  public static final Column SEAT =
      Column.integer("seat", "number", "Where the player sat, from 0, which is East.");

  /** The column {@code player}. */
  public static final Column PLAYER = Column.text("player", "The player.");

  /** The column {@code fault}. */
  public static final Column FAULT =
      Column.text("fault", "Whether it broke down or answered illegally.");

  /** The column {@code words}. */
  public static final Column WORDS = Column.text("words", "What was wrong with an illegal answer.");

  /** The column {@code command}. */
  public static final Column COMMAND =
      Column.text("command", "Shows the game again, typed in the folder of the results.");

  private FaultColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(DEAL, ARM, SEAT, PLAYER, FAULT, WORDS, COMMAND);
  }
}
