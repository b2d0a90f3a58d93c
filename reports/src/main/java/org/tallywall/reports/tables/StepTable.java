package org.tallywall.reports.tables;

import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.DefenceColumns;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.reports.words.MeasureWords;

/** The steps of the defence, {@code defence.csv} in words for readers. */
final class StepTable {
  private StepTable() {}

  static Table of(Results results) {
    List<Pick> picks =
        List.of(
            Pick.arm(results, DefenceColumns.ARM),
            Pick.arm(results, DefenceColumns.BASELINE),
            Pick.words(DefenceColumns.STEP, row -> row.text(DefenceColumns.STEP).replace('-', ' ')),
            Pick.inHundred(DefenceColumns.GAMES, row -> ofGames(row, DefenceColumns.GAMES)),
            Pick.mean(DefenceColumns.MEAN_WALL),
            Pick.inHundred(
                DefenceColumns.GAMES_COMPARED, row -> ofGames(row, DefenceColumns.GAMES_COMPARED)),
            Pick.count(DefenceColumns.DEALS_COMPARED),
            Pick.words(
                DefenceColumns.MEASURE,
                row -> MeasureWords.heading(row.text(DefenceColumns.MEASURE))),
            Pick.rangeInHundred(DefenceColumns.DIFFERENCE),
            Pick.words("told-apart", "Whether plus or minus is clear.", EffectTables::clear)
                .headed("clear?"));
    List<CsvFile.Row> rows = results.rows(DefenceColumns.FILE);
    String ranges = Pick.ranges(results, picks, rows);
    TableBuilder table =
        Pick.table(
                DefenceColumns.FILE,
                "How often it came to each step of the defence, and what was gained or lost in games"
                    + " that were alike up to there",
                picks,
                rows)
            .note(
                "The difference is taken only over games that came to the step before the two games"
                    + " differed (at that discard at the latest): later on, luck has chosen the games."
                    + " For \u201cplayed differently\u201d it is taken over all games that differed.");
    if (!ranges.isEmpty()) {
      table.note(ranges + " It takes no account of how many rows there are.");
    }
    return table.build();
  }

  private static OptionalDouble ofGames(CsvFile.Row row, Column count) {
    return Pick.quotient(row.number(count), row.count(DefenceColumns.SEAT_GAMES));
  }
}
