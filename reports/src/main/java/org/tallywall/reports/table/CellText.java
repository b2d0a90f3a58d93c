package org.tallywall.reports.table;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What people read in a cell, whatever the page: shares as percentages, thousands apart, an
 * interval in brackets, rounded by {@link Rounding}. Every writer for people uses this, so that a
 * number looks the same wherever it is met.
 */
public final class CellText {
  private static final int GROUP = 3;

  private CellText() {}

  /**
   * Writes a cell for people.
   *
   * @param column the column in which it stands
   * @param cell a cell that fits the column
   * @return text such as {@code 22.37 % (21.56 % to 23.20 %)}, not escaped; empty for an empty cell
   */
  public static String of(Column column, Cell cell) {
    if (cell instanceof Cell.Text text) {
      return text.value();
    }
    if (cell instanceof Cell.Whole number) {
      return grouped(Long.toString(number.value()));
    }
    if (cell instanceof Cell.Decimal number) {
      return number(column, Rounding.nearest(number.value(), scale(column)));
    }
    return cell instanceof Cell.Interval interval ? interval(column, interval) : "";
  }

  /**
   * Writes all cells of a table for people.
   *
   * @param table the table
   * @return the texts, row by row, not escaped
   */
  public static List<List<String>> rows(Table table) {
    return table.rows().stream().map(row -> row(table.columns(), row)).toList();
  }

  private static List<String> row(List<Column> columns, List<Cell> cells) {
    return IntStream.range(0, cells.size())
        .mapToObj(i -> of(columns.get(i), cells.get(i)))
        .toList();
  }

  private static String interval(Column column, Cell.Interval cell) {
    Rounding.Rounded shown =
        Rounding.interval(cell.estimate(), cell.low(), cell.high(), scale(column));
    return number(column, shown.estimate())
        + (" (" + number(column, shown.low()))
        + (" to " + number(column, shown.high()) + ")");
  }

  /** A share's places are those of its percentage, two fewer than its own. */
  private static int scale(Column column) {
    return column.type().isRate() ? column.places() + 2 : column.places();
  }

  private static String number(Column column, BigDecimal rounded) {
    return column.type().isRate()
        ? grouped(rounded.movePointRight(2).toPlainString()) + " %"
        : grouped(rounded.toPlainString());
  }

  /**
   * Puts a comma before every three digits of the whole part.
   *
   * @param plain digits, perhaps with a minus before and a fraction behind, without exponent
   * @return such as {@code -1,234.5}
   */
  public static String grouped(String plain) {
    int point = plain.indexOf('.');
    int first = plain.startsWith("-") ? 1 : 0;
    StringBuilder text = new StringBuilder(plain);
    for (int i = (point < 0 ? plain.length() : point) - GROUP; i > first; i -= GROUP) {
      text.insert(i, ',');
    }
    return text.toString();
  }
}
