package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/** The columns of {@code faults.csv}. */
public final class FaultColumns {
  /** The file's name without its ending. */
  public static final String FILE = "faults";

  /** The column {@code deal}. */
  public static final Column DEAL = Column.integer("deal", "number", "The deal.");

  private FaultColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(DEAL);
  }
}
