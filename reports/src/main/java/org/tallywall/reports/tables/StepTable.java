package org.tallywall.reports.tables;

import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.DefenseColumns;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.reports.words.MeasureWords;

/** The steps of the defense, {@code defense.csv} in words for readers. */
final class StepTable {
  private StepTable() {}

  static Table of(Results results) {
    List<Pick> picks =
        List.of(
            Pick.arm(results, DefenseColumns.ARM),
            Pick.arm(results, DefenseColumns.BASELINE),
            Pick.words(DefenseColumns.STEP, row -> row.text(DefenseColumns.STEP).replace('-', ' ')),
            Pick.inHundred(DefenseColumns.GAMES, row -> ofGames(row, DefenseColumns.GAMES)),
            Pick.mean(DefenseColumns.MEAN_WALL),
            Pick.inHundred(
                DefenseColumns.GAMES_COMPARED, row -> ofGames(row, DefenseColumns.GAMES_COMPARED)),
            Pick.count(DefenseColumns.DEALS_COMPARED),
            Pick.words(
                DefenseColumns.MEASURE,
                row -> MeasureWords.heading(row.text(DefenseColumns.MEASURE))),
            Pick.rangeInHundred(DefenseColumns.DIFFERENCE),
            Pick.words("told-apart", "Whether plus or minus is clear.", EffectTables::clear)
                .headed("clear?"));
    List<CsvFile.Row> rows = results.rows(DefenseColumns.FILE);
    String ranges = Pick.ranges(results, picks, rows);
    TableBuilder table =
        Pick.table(
                DefenseColumns.FILE,
                "How often each step of the defense came up, and what it gained or lost in games that"
                    + " were alike up to there",
                picks,
                rows)
            .note(
                "The difference covers only games that came to the step before the two games differed"
                    + " (at that discard at the latest): after that, luck picks the games. For"
                    + " \u201cplayed differently\u201d it covers all games that differed.");
    if (!ranges.isEmpty()) {
      table.note(ranges + " It does not allow for how many rows there are.");
    }
    return table.build();
  }

  private static OptionalDouble ofGames(CsvFile.Row row, Column count) {
    return Pick.quotient(row.number(count), row.count(DefenseColumns.SEAT_GAMES));
  }
}
