package org.tallywall.reports.tables;

import java.util.List;
import java.util.Optional;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.WayColumns;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.words.Ways;
import org.tallywall.reports.words.Wording;

/** In which settings the ways of playing differ, in full. */
public final class WayTables {
  private WayTables() {}

  /**
   * Every difference.
   *
   * @param results what a results folder holds
   * @return the table; empty where no way differs
   */
  public static Optional<Table> of(Results results) {
    List<CsvFile.Row> rows = results.rows(WayColumns.FILE);
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    String baseline = Ways.name(results, rows.get(0).text(WayColumns.BASELINE));
    List<Pick> picks =
        List.of(
            Pick.arm(results, WayColumns.ARM),
            Pick.words(WayColumns.SETTING),
            Pick.words(WayColumns.VALUE),
            Pick.words(WayColumns.BASELINE_VALUE),
            Pick.words(WayColumns.WORDS));
    String title = "How the ways of playing differ from " + Wording.quoted(baseline);
    return Optional.of(Pick.table(WayColumns.FILE, title, picks, rows).build());
  }
}
