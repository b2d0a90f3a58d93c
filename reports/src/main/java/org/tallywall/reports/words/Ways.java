package org.tallywall.reports.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.WinRateColumns;

/** The ways of playing of a study: rows of {@code win-rates.csv} that stand beside each other. */
public final class Ways {
  private static final String ALL = "all";
  private static final String TABLE = "table";

  private Ways() {}

  /**
   * Whether one fixed table was played, where the seats take the place of ways of playing.
   *
   * @param results what a results folder holds
   * @return true if so
   */
  public static boolean oneTable(Results results) {
    return results.study().has(TABLE);
  }

  /**
   * The rows to be shown beside each other: the seats of one fixed table, else a row for each way
   * of playing, all its seats together where there is such a row.
   *
   * @param results what a results folder holds
   * @return the rows in their order
   */
  public static List<CsvFile.Row> rows(Results results) {
    List<CsvFile.Row> all = results.rows(WinRateColumns.FILE);
    if (oneTable(results)) {
      return all.stream().filter(row -> !row.text(WinRateColumns.SEAT).equals(ALL)).toList();
    }
    Map<String, CsvFile.Row> one = new LinkedHashMap<>();
    for (CsvFile.Row row : all) {
      if (row.text(WinRateColumns.SEAT).equals(ALL)
          || !one.containsKey(row.text(WinRateColumns.ARM))) {
        one.put(row.text(WinRateColumns.ARM), row);
      }
    }
    return new ArrayList<>(one.values());
  }

  /**
   * What a row is called.
   *
   * @param results what a results folder holds
   * @param row a row of the file
   * @return the words
   */
  public static String label(Results results, CsvFile.Row row) {
    return oneTable(results)
        ? seat(row) + ", " + row.text(WinRateColumns.PLAYER)
        : name(results, row.text(WinRateColumns.ARM));
  }

  /**
   * What a way of playing is called: values of a setting stand behind the setting's name.
   *
   * @param results what a results folder holds
   * @param arm the way of playing
   * @return the words
   */
  public static String name(Results results, String arm) {
    return results.study().has("sweep") ? SettingWords.label(results, arm) : arm;
  }

  /**
   * The seat as people say it.
   *
   * @param row a row of the file
   * @return the words
   */
  public static String seat(CsvFile.Row row) {
    String seat = row.text(WinRateColumns.SEAT);
    if (seat.equals(ALL)) {
      return "all four seats";
    }
    return seat.matches("[0-3]") ? SeatWords.FROM_EAST.get(Integer.parseInt(seat)) : seat;
  }

  /**
   * The way of playing that the others are compared with; empty where there is none.
   *
   * @param results what a results folder holds
   * @return the words
   */
  public static String baseline(Results results) {
    List<Compared> primary = Compared.primary(results);
    if (!primary.isEmpty()) {
      return primary.get(0).baseline();
    }
    return results.study().text("baseline");
  }

  /**
   * Whether there is more than one way of playing to tell apart in files with a line each.
   *
   * @param rows rows of one file
   * @return true if so
   */
  public static boolean several(List<CsvFile.Row> rows) {
    return rows.stream().map(row -> row.text(WinRateColumns.ARM)).distinct().count() > 1;
  }
}
