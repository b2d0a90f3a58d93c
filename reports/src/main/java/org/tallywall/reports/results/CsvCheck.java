package org.tallywall.reports.results;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.reports.schema.Schema;
import org.tallywall.reports.schema.Sum;
import org.tallywall.reports.table.Column;

/**
 * Judges a file of results by what is known of its columns, so that whoever reads it later meets
 * nothing that cannot be. Columns and files that are not known are let pass.
 */
final class CsvCheck {
  private static final String UNIT = "unit";
  private static final String SHARE = "share of games";
  private static final List<String> SHARES = List.of("level", "baseline-level", "value");
  private static final String DIFFERENCE = "difference";

  private final CsvFile file;
  private final String name;

  private CsvCheck(CsvFile file, String name) {
    this.file = file;
    this.name = name;
  }

  /**
   * Judges a file.
   *
   * @param file the file
   * @param name what it is called, without its ending
   * @throws WrongResultsException if a cell or a row cannot be
   */
  static void of(CsvFile file, String name) {
    new CsvCheck(file, name).check();
  }

  private void check() {
    List<Column> columns = Schema.columns(name);
    List<Column> cells =
        columns.stream().flatMap(one -> one.spread().stream()).filter(file::has).toList();
    List<Column> ranges =
        columns.stream().filter(one -> one.type().hasInterval()).filter(this::hasRange).toList();
    List<Sum> sums = Schema.sums(name).stream().filter(this::has).toList();
    for (CsvFile.Row row : file.rows()) {
      for (Column column : cells) {
        Optional<String> wrong = column.values().wrong(row.text(column));
        if (wrong.isPresent()) {
          throw row.wrong(column.name(), wrong.get());
        }
      }
      ranges.forEach(column -> range(row, column.name()));
      sums.forEach(sum -> sum(row, sum));
      shares(row);
    }
  }

  private boolean hasRange(Column column) {
    return column.spread().stream().allMatch(file::has);
  }

  private boolean has(Sum sum) {
    return file.has(sum.whole()) && sum.parts().stream().allMatch(file::has);
  }

  /** A range has two ends in their order, and stands at a number. */
  private static void range(CsvFile.Row row, String column) {
    boolean low = row.number(column + "-low").isPresent();
    boolean high = row.number(column + "-high").isPresent();
    if (low != high) {
      throw row.wrong(column + (low ? "-high" : "-low"), "this end of the range is missing");
    }
    if (low && row.number(column).isEmpty()) {
      throw row.wrong(column, "the range stands at no number");
    }
    row.ranged(column);
  }

  private static void sum(CsvFile.Row row, Sum sum) {
    if (row.text(sum.whole()).isEmpty()) {
      return;
    }
    long parts = 0;
    List<String> names = new ArrayList<>();
    for (Column part : sum.parts()) {
      parts += row.count(part);
      names.add(part.name());
      if (parts > row.count(sum.whole())) {
        String what = "%s come to %s, which is more".formatted(String.join(", ", names), parts);
        throw row.wrong(sum.whole().name(), row.text(sum.whole()) + " cannot be: " + what);
      }
    }
  }

  private void shares(CsvFile.Row row) {
    if (!file.has(UNIT) || !row.text(UNIT).equals(SHARE) || Schema.columns(name).isEmpty()) {
      return;
    }
    SHARES.stream().filter(file::has).forEach(column -> share(row, column, 0));
    if (file.has(DIFFERENCE)) {
      share(row, DIFFERENCE, -1);
    }
  }

  private static void share(CsvFile.Row row, String column, double least) {
    OptionalDouble number = row.number(column);
    if (number.isPresent() && !(number.getAsDouble() >= least && number.getAsDouble() <= 1)) {
      throw row.wrong(column, row.text(column) + " is out of range for a share of games");
    }
  }
}
