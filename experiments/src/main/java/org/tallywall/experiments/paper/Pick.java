package org.tallywall.experiments.paper;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.Sheet;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * A column that people read, and how its cells are made of a row of a file.
 *
 * @param column the column
 * @param cell makes its cell
 */
record Pick(Column column, Function<Sheet.Row, Cell> cell) {

  static Pick words(String name, String meaning, Function<Sheet.Row, String> text) {
    return new Pick(Column.text(name, meaning), row -> Cell.text(text.apply(row)));
  }

  static Pick words(String name, String meaning) {
    return words(name, meaning, row -> row.text(name));
  }

  /** A column of words as the file has it. */
  static Pick of(Column column) {
    return new Pick(column, row -> Cell.text(row.text(column)));
  }

  /** The way of playing. */
  static Pick arm(Results results) {
    return words("arm", "The way of playing.", row -> Ways.name(results, row.text("arm")))
        .headed("way of playing");
  }

  static Pick count(String name, String unit, String meaning) {
    return new Pick(
        Column.integer(name, unit, meaning),
        row -> row.text(name).isEmpty() ? Cell.empty() : Cell.whole(row.count(name)));
  }

  /** A mean as the file has it. */
  static Pick mean(String name, String unit, String meaning) {
    return new Pick(Column.decimal(name, unit, meaning), row -> Cell.decimal(row.number(name)));
  }

  /** How many in 100 there are of a count among a whole. */
  static Pick inHundred(
      String name, String unit, String meaning, Function<Sheet.Row, OptionalDouble> share) {
    return new Pick(
        Column.decimal(name, unit, meaning).shownTo(1), row -> hundredfold(share.apply(row)));
  }

  /** A number with its range, a hundredfold; the number alone where there is no range. */
  static Pick rangeInHundred(String name, String unit, String meaning) {
    return new Pick(
        Column.decimalInterval(name, unit, meaning).shownTo(1),
        row ->
            row.ranged(name)
                .map(ranged -> ranged.inHundred().cell())
                .orElse(hundredfold(row.number(name))));
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

  /** The quotient of two numbers of a row, if it has one. */
  static OptionalDouble quotient(OptionalDouble part, double whole) {
    return part.isEmpty() || whole == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(part.getAsDouble() / whole);
  }

  /** A table of such columns, a row for each row of the file. */
  static TableBuilder table(String stem, String title, List<Pick> picks, List<Sheet.Row> rows) {
    TableBuilder table = Table.builder(stem, title);
    table.columns(picks.stream().map(Pick::column).toList());
    rows.forEach(row -> table.row(picks.stream().map(pick -> pick.cell().apply(row)).toList()));
    return table;
  }
}
