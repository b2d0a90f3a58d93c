package org.tallywall.experiments.gauges.calibration;

import java.util.List;
import java.util.function.Function;
import org.tallywall.reports.markdown.MarkdownWriter;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** What was said beside what happened, as tables of a page. */
final class CalibrationTables {
  private CalibrationTables() {}

  /**
   * A table of bins.
   *
   * @param place what the bins are bins of
   * @param named the name of a bin
   * @param what what happened
   * @param bins what was counted
   * @return Markdown
   */
  static String bins(String place, Function<Bins.Row, String> named, String what, Bins bins) {
    TableBuilder table =
        Table.builder("bins", what)
            .columns(
                Column.text("place", "The bin.").headed(place),
                Column.integer("decisions", "decisions", "Decisions in the bin."),
                Column.decimal("said", "in 100", "Mean of what was said.")
                    .shownTo(2)
                    .headed("said, in 100"),
                Column.decimalInterval("happened", "in 100", "How often it happened.")
                    .headed(what + ", in 100"));
    for (Bins.Row row : bins.rows()) {
      table.row(
          Cell.text(named.apply(row)),
          Cell.whole(row.count()),
          Cell.decimal(100 * row.said()),
          Cell.interval(100 * row.happened(), 100 * row.limits().low(), 100 * row.limits().high()));
    }
    return grid(table.build());
  }

  /**
   * A table of scores, one line for each way of reading.
   *
   * @param ways the ways, the usual one first
   * @param scores how well each fits
   * @return Markdown
   */
  static String scores(List<RiskTally.Way> ways, List<Score> scores) {
    TableBuilder table =
        Table.builder("scores", "Scores")
            .columns(
                Column.text("evidence", "What is read."),
                Column.decimal("square", "thousandths", "Squared error.")
                    .shownTo(3)
                    .headed("squared error in thousandths"),
                Column.decimalInterval("square-more", "thousandths", "Its difference.")
                    .headed("more than with the usual evidence"),
                Column.decimal("log", "thousandths", "Minus the logarithm.")
                    .shownTo(3)
                    .headed("log score in thousandths"),
                Column.decimalInterval("log-more", "thousandths", "Its difference.")
                    .headed("more than usual"));
    for (int way = 0; way < ways.size(); way++) {
      Score score = scores.get(way);
      table.row(
          Cell.text(ways.get(way).name()),
          Cell.decimal(1000 * score.squared().value()),
          way == 0 ? Cell.empty() : thousand(score.squaredMore()),
          Cell.decimal(1000 * score.logarithmic().value()),
          way == 0 ? Cell.empty() : thousand(score.logarithmicMore()));
    }
    return grid(table.build());
  }

  private static Cell thousand(Score.Mean mean) {
    return Cell.interval(1000 * mean.value(), 1000 * mean.low(), 1000 * mean.high());
  }

  private static String grid(Table table) {
    return MarkdownWriter.grid(table).strip() + "\n\n";
  }
}
