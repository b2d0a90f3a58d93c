package org.tallywall.reports.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.FaultColumns;
import org.tallywall.reports.schema.Schema;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Names;
import org.tallywall.reports.table.Table;

/**
 * Files of numbers that no page knows in particular: shown as they are, column by column, an
 * estimate with its limits in one cell.
 */
public final class OtherTables {
  private static final Map<String, String> TITLES = Map.of(FaultColumns.FILE, "Deals set aside");

  private OtherTables() {}

  /**
   * The tables of all files that have no page of their own.
   *
   * @param results what a results folder holds
   * @return the tables in their order
   */
  public static List<Table> of(Results results) {
    List<Table> tables = new ArrayList<>();
    new TreeMap<>(results.sheets())
        .forEach(
            (name, sheet) -> {
              if (!Schema.files().contains(name) && !sheet.rows().isEmpty() && isName(name)) {
                tables.add(table(name, sheet));
              }
            });
    return tables;
  }

  /**
   * One such file.
   *
   * @param name the name in files
   * @param sheet the file
   * @return the table
   */
  public static Table table(String name, CsvFile sheet) {
    List<Pick> picks = new ArrayList<>();
    for (String column : sheet.columns()) {
      boolean limit = column.endsWith("-low") || column.endsWith("-high");
      if (isName(column) && !limit && !column.endsWith("-method")) {
        picks.add(pick(column, sheet));
      }
    }
    return Pick.table(name, TITLES.getOrDefault(name, name), picks, sheet.rows()).build();
  }

  private static boolean isName(String text) {
    try {
      Names.check("a name", text);
      return true;
    } catch (IllegalArgumentException other) {
      return false;
    }
  }

  private static Pick pick(String name, CsvFile sheet) {
    String heading = name.equals("arm") ? "way of playing" : name.replace('-', ' ');
    String meaning = "See columns.md.";
    boolean ranged = sheet.has(name + "-low") && sheet.has(name + "-high");
    if (ranged && isNumbers(name, sheet)) {
      return new Pick(
          Column.decimalInterval(name, "see columns.md", meaning).headed(heading).shownTo(4),
          row -> row.ranged(name).map(one -> one.cell()).orElse(Cell.decimal(row.number(name))));
    }
    if (isNumbers(name, sheet)) {
      return isCounts(name, sheet)
          ? Pick.count(Column.integer(name, "see columns.md", meaning).headed(heading))
          : new Pick(
              Column.decimal(name, "see columns.md", meaning).headed(heading).shownTo(4),
              row -> Cell.decimal(row.number(name)));
    }
    return Pick.words(Column.text(name, meaning).headed(heading));
  }

  private static boolean isNumbers(String name, CsvFile sheet) {
    return sheet.rows().stream().map(row -> row.text(name)).allMatch(OtherTables::isNumber);
  }

  private static boolean isNumber(String text) {
    return text.isEmpty() || text.matches("-?\\d+(\\.\\d+)?");
  }

  private static boolean isCounts(String name, CsvFile sheet) {
    return sheet.rows().stream().map(row -> row.text(name)).allMatch(t -> t.matches("\\d{0,15}"));
  }
}
