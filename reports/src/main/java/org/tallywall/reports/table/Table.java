package org.tallywall.reports.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A table as a value: what it is called, what its columns mean, its rows in their order, and notes.
 *
 * @param stem the name of its file without the ending: small letters, digits and single hyphens
 * @param title one line that people read above it
 * @param columns at least one; no two names alike, those of {@link Column#spread()} included
 * @param rows the rows, each with one fitting cell for every column
 * @param notes sentences that people read below it
 */
public record Table(
    String stem, String title, List<Column> columns, List<List<Cell>> rows, List<String> notes) {

  /** A number as people read it, perhaps with a sign or as a limit. */
  private static final Pattern NUMBER = Pattern.compile("[<>]? ?[-+\u2212]?[0-9][0-9,.]*");

  /**
   * Takes a table and copies its lists.
   *
   * @param stem the name of its file without the ending
   * @param title one line that people read above it
   * @param columns its columns
   * @param rows its rows
   * @param notes sentences below it
   * @throws IllegalArgumentException if a name, a column or a cell is not as it should be; the
   *     message names the place
   */
  public Table {
    Names.check("a table's file name", stem);
    if (title == null || title.isBlank()) {
      throw new IllegalArgumentException("table " + stem + " lacks a title");
    }
    columns = List.copyOf(columns);
    notes = List.copyOf(notes);
    checkColumns(stem, columns);
    List<List<Cell>> copies = new ArrayList<>(rows.size());
    for (List<Cell> row : rows) {
      checkRow(stem, columns, copies.size() + 1, row);
      copies.add(List.copyOf(row));
    }
    rows = List.copyOf(copies);
  }

  /**
   * Starts a table.
   *
   * @param stem the name of its file without the ending
   * @param title one line that people read above it
   * @return a builder without columns and rows
   */
  public static TableBuilder builder(String stem, String title) {
    return new TableBuilder(stem, title);
  }

  /**
   * The same table with one value a cell, as a file for machines has it: an estimate with its
   * interval becomes three cells, {@code name}, {@code name-low} and {@code name-high}.
   *
   * @return the table without intervals
   */
  public Table spread() {
    List<Column> plain = columns.stream().flatMap(column -> column.spread().stream()).toList();
    return new Table(stem, title, plain, rows.stream().map(this::spread).toList(), notes);
  }

  private List<Cell> spread(List<Cell> row) {
    List<Cell> plain = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      if (row.get(i) instanceof Cell.Interval interval) {
        plain.add(Cell.decimal(interval.estimate()));
        plain.add(Cell.decimal(interval.low()));
        plain.add(Cell.decimal(interval.high()));
      } else {
        plain.add(row.get(i));
        if (columns.get(i).type().hasInterval()) {
          plain.add(Cell.empty());
          plain.add(Cell.empty());
        }
      }
    }
    return plain;
  }

  /**
   * Whether people read a column from its right end: numbers, and words that are all numbers, such
   * as limits.
   *
   * @param column its place, from 0
   * @return true if its cells stand at the right
   */
  public boolean alignsRight(int column) {
    if (columns.get(column).type().isNumber()) {
      return true;
    }
    List<String> words =
        rows.stream()
            .map(row -> CellText.of(columns.get(column), row.get(column)))
            .filter(text -> !text.isEmpty())
            .toList();
    return !words.isEmpty() && words.stream().allMatch(text -> NUMBER.matcher(text).matches());
  }

  /**
   * The same table without the columns in which no row has anything.
   *
   * @return a table with at least one column; the same one where no row is there to judge by
   */
  public Table withoutEmptyColumns() {
    List<Integer> filled =
        IntStream.range(0, columns.size())
            .filter(at -> rows.stream().anyMatch(row -> isFilled(columns.get(at), row.get(at))))
            .boxed()
            .toList();
    return filled.isEmpty() || filled.size() == columns.size()
        ? this
        : new Table(
            stem,
            title,
            filled.stream().map(columns::get).toList(),
            rows.stream().map(row -> filled.stream().map(row::get).toList()).toList(),
            notes);
  }

  private static boolean isFilled(Column column, Cell cell) {
    return !CellText.of(column, cell).isEmpty();
  }

  private static void checkColumns(String stem, List<Column> columns) {
    if (columns.isEmpty()) {
      throw new IllegalArgumentException("table " + stem + " lacks columns");
    }
    Set<String> seen = new HashSet<>();
    for (Column column : columns) {
      for (Column plain : column.spread()) {
        if (!seen.add(plain.name())) {
          throw new IllegalArgumentException(
              "table " + stem + " has two columns named " + plain.name());
        }
      }
    }
  }

  /** Fails unless the row has one fitting cell for every column; {@code number} counts from 1. */
  static void checkRow(String stem, List<Column> columns, int number, List<Cell> row) {
    String where = "table " + stem + ", row " + number;
    if (row.size() != columns.size()) {
      throw new IllegalArgumentException(
          where + ": expected " + columns.size() + " cells, got " + row.size());
    }
    for (int i = 0; i < row.size(); i++) {
      Column column = columns.get(i);
      Cell cell = row.get(i);
      if (cell == null || !column.type().accepts(cell)) {
        String got = cell == null ? "no cell at all" : cell.described();
        throw new IllegalArgumentException(
            where
                + (", column " + column.name())
                + (": expected " + column.type().expected())
                + (", got " + got));
      }
    }
  }
}
