package org.tallywall.reports.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Collects a table: first its columns, then its rows; each row is checked as it comes. */
public final class TableBuilder {
  private final String stem;
  private final String title;
  private final List<Column> columns = new ArrayList<>();
  private final List<List<Cell>> rows = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  TableBuilder(String stem, String title) {
    this.stem = stem;
    this.title = title;
  }

  /**
   * Adds columns at the right.
   *
   * @param more the columns in their order
   * @return this builder
   * @throws IllegalStateException if there are rows already
   */
  public TableBuilder columns(Column... more) {
    return columns(Arrays.asList(more));
  }

  /**
   * Adds columns at the right.
   *
   * @param more the columns in their order
   * @return this builder
   * @throws IllegalStateException if there are rows already
   */
  public TableBuilder columns(List<Column> more) {
    if (!rows.isEmpty()) {
      throw new IllegalStateException("table " + stem + ": columns come before rows");
    }
    columns.addAll(more);
    return this;
  }

  /**
   * Adds a row at the end.
   *
   * @param cells one for every column
   * @return this builder
   * @throws IllegalArgumentException if there are too many or too few cells, or one does not fit
   *     its column; the message names table, row and column
   */
  public TableBuilder row(Cell... cells) {
    return row(Arrays.asList(cells));
  }

  /**
   * Adds a row at the end.
   *
   * @param cells one for every column
   * @return this builder
   * @throws IllegalArgumentException if there are too many or too few cells, or one does not fit
   *     its column; the message names table, row and column
   */
  public TableBuilder row(List<Cell> cells) {
    Table.checkRow(stem, columns, rows.size() + 1, cells);
    rows.add(List.copyOf(cells));
    return this;
  }

  /**
   * Adds a row at the end, whose cells know their columns.
   *
   * @param row cells for some or all of the columns; the others stay empty
   * @return this builder
   * @throws IllegalArgumentException if a cell is set for a column that the table does not have, or
   *     does not fit its column; the message names table, row and column
   */
  public TableBuilder row(Row row) {
    List<Cell> cells = columns.stream().map(row::take).toList();
    if (!row.left().isEmpty()) {
      throw new IllegalArgumentException(
          "table " + stem + ", row " + (rows.size() + 1) + ": there is no column " + row.left());
    }
    return row(cells);
  }

  /**
   * Adds a note below the table.
   *
   * @param sentence what people read
   * @return this builder
   */
  public TableBuilder note(String sentence) {
    notes.add(sentence);
    return this;
  }

  /**
   * Makes the table. The builder may go on afterwards.
   *
   * @return the table
   * @throws IllegalArgumentException if the file name, the title or the columns are not as {@link
   *     Table} wants them
   */
  public Table build() {
    return new Table(stem, title, columns, rows, notes);
  }
}
