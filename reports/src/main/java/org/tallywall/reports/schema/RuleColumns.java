package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/** The columns of {@code rules.csv}: every switch of the table's rules. */
public final class RuleColumns {
  /** The file's name without its ending. */
  public static final String FILE = "rules";

  /** The column {@code switch}. */
  public static final Column SWITCH = Column.text("switch", "The switch.").filled();

  /** The column {@code value}. */
  public static final Column VALUE = Column.text("value", "How it was played.");

  /** The column {@code usual}. */
  public static final Column USUAL =
      Column.text("usual", "How it is unless a study says otherwise.");

  /** The column {@code changed}. */
  public static final Column CHANGED =
      Column.text("changed", "\"changed\" where the two differ.").oneOf("changed");

  private RuleColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(SWITCH, VALUE, USUAL, CHANGED);
  }
}
