package org.tallywall.reports.tables;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.reports.words.RangeWords;
import org.tallywall.reports.words.Ways;

/**
 * A column that people read, and how its cells are made of a row of a file.
 *
 * @param column the column
 * @param cell makes its cell
 */
public record Pick(Column column, Function<CsvFile.Row, Cell> cell) {

  private static final String IN_HUNDRED = "in 100 games";

  /**
   * Words that readers alone are shown.
   *
   * @param name the column's name
   * @param meaning one sentence that explains it
   * @param text makes the words of a row
   * @return the column
   */
  public static Pick words(String name, String meaning, Function<CsvFile.Row, String> text) {
    return words(Column.text(name, meaning), text);
  }

  /**
   * Words of a file, said otherwise.
   *
   * @param column the file's column
   * @param text makes the words of a row
   * @return the column
   */
  public static Pick words(Column column, Function<CsvFile.Row, String> text) {
    return new Pick(column, row -> Cell.text(text.apply(row)));
  }

  /**
   * Words as the file has them.
   *
   * @param column the file's column
   * @return the column
   */
  public static Pick words(Column column) {
    return words(column, row -> row.text(column));
  }

  /**
   * The way of playing.
   *
   * @param results what a results folder holds
   * @param column the file's column
   * @return the column
   */
  public static Pick arm(Results results, Column column) {
    return words(column, row -> Ways.name(results, row.text(column)));
  }

  /**
   * A count as the file has it.
   *
   * @param column the file's column
   * @return the column
   */
  public static Pick count(Column column) {
    return new Pick(
        column, row -> row.text(column).isEmpty() ? Cell.empty() : Cell.whole(row.count(column)));
  }

  /**
   * A mean as the file has it.
   *
   * @param column the file's column
   * @return the column
   */
  public static Pick mean(Column column) {
    return new Pick(column, row -> Cell.decimal(row.number(column)));
  }

  /**
   * How many in 100 there are of something.
   *
   * @param column the file's column
   * @param share makes the share of a row
   * @return the column
   */
  public static Pick inHundred(Column column, Function<CsvFile.Row, OptionalDouble> share) {
    Column shown =
        Column.decimal(column.name(), IN_HUNDRED, column.meaning())
            .headed(column.heading())
            .shownTo(1);
    return new Pick(shown, row -> hundredfold(share.apply(row)));
  }

  /**
   * A number with its range, a hundredfold; the number alone where there is no range.
   *
   * @param column the file's column
   * @return the column
   */
  public static Pick rangeInHundred(Column column) {
    Column shown =
        Column.decimalInterval(column.name(), IN_HUNDRED, column.meaning())
            .headed(column.heading())
            .shownTo(1);
    return new Pick(
        shown,
        row ->
            row.ranged(column)
                .map(ranged -> ranged.inHundred().cell())
                .orElse(hundredfold(row.number(column))));
  }

  private static Cell hundredfold(OptionalDouble number) {
    return number.isPresent() ? Cell.decimal(100 * number.getAsDouble()) : Cell.empty();
  }

  Pick headed(String heading) {
    return new Pick(column.headed(heading), cell);
  }

  Pick shownTo(int places) {
    return new Pick(column.shownTo(places), cell);
  }

  /** What the ranges of these columns are; empty where none of the rows has one. */
  static String ranges(Results results, List<Pick> picks, List<CsvFile.Row> rows) {
    boolean any = rows.stream().anyMatch(row -> picks.stream().anyMatch(pick -> pick.isRange(row)));
    return any ? RangeWords.of(results) : "";
  }

  private boolean isRange(CsvFile.Row row) {
    return cell.apply(row) instanceof Cell.Interval;
  }

  /** The quotient of two numbers of a row, if it has one. */
  static OptionalDouble quotient(OptionalDouble part, double whole) {
    return part.isEmpty() || whole == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(part.getAsDouble() / whole);
  }

  /**
   * A table of such columns, a row for each row of the file.
   *
   * @param stem the name of the table
   * @param title its title
   * @param picks its columns
   * @param rows rows of one file
   * @return the table, to be added to
   */
  public static TableBuilder table(
      String stem, String title, List<Pick> picks, List<CsvFile.Row> rows) {
    TableBuilder table = Table.builder(stem, title);
    table.columns(picks.stream().map(Pick::column).toList());
    rows.forEach(row -> table.row(picks.stream().map(pick -> pick.cell().apply(row)).toList()));
    return table;
  }
}
