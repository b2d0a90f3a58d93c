package org.tallywall.reports.table;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * The cells of one row, each set for its column, so that no cell can slip into the column beside
 * its own. A column that is not set stays empty.
 */
public final class Row {
  private final Map<String, Cell> cells = new HashMap<>();

  /** A row of which no cell is set. */
  public Row() {}

  /**
   * Sets a cell.
   *
   * @param column its column
   * @param cell the cell
   * @return this row
   * @throws IllegalArgumentException if the column was set already
   */
  public Row set(Column column, Cell cell) {
    if (cells.put(column.name(), cell) != null) {
      throw new IllegalArgumentException("the column " + column.name() + " is set twice");
    }
    return this;
  }

  /**
   * Sets a cell of words.
   *
   * @param column its column
   * @param text the words
   * @return this row
   * @throws IllegalArgumentException if the column was set already
   */
  public Row set(Column column, String text) {
    return set(column, Cell.text(text));
  }

  /**
   * Sets a cell of a whole number.
   *
   * @param column its column
   * @param number the number
   * @return this row
   * @throws IllegalArgumentException if the column was set already
   */
  public Row set(Column column, long number) {
    return set(column, Cell.whole(number));
  }

  /**
   * Sets a cell of a number that may be missing.
   *
   * @param column its column
   * @param number the number, finite
   * @return this row
   * @throws IllegalArgumentException if the column was set already
   */
  public Row set(Column column, OptionalDouble number) {
    return set(column, Cell.decimal(number));
  }

  /** Takes out the cell of a column; an empty one if it was not set. */
  Cell take(Column column) {
    Cell cell = cells.remove(column.name());
    return cell == null ? Cell.empty() : cell;
  }

  /** The names of columns whose cells were not taken. */
  Set<String> left() {
    return new TreeSet<>(cells.keySet());
  }
}
