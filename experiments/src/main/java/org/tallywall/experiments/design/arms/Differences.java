package org.tallywall.experiments.design.arms;

import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.study.Measure;
import org.tallywall.reports.schema.DifferenceColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** The ways of playing against the one that they are compared with, on the same deals. */
public final class Differences {
  private Differences() {}

  /**
   * The table.
   *
   * @param differences all comparisons of a study
   * @return a row each
   */
  public static Table of(List<Difference> differences) {
    TableBuilder table =
        Table.builder(
                DifferenceColumns.FILE, "Each way of playing against the one it is compared with")
            .columns(DifferenceColumns.all());
    differences.forEach(difference -> table.row(row(difference)));
    return table.build();
  }

  private static Row row(Difference difference) {
    PairNumbers numbers = difference.numbers();
    Estimate estimate = difference.estimate();
    return new Row()
        .set(DifferenceColumns.ARM, difference.arm())
        .set(DifferenceColumns.BASELINE, difference.baseline())
        .set(DifferenceColumns.MEASURE, difference.measure().text())
        .set(DifferenceColumns.ROLE, difference.role().text())
        .set(DifferenceColumns.UNIT, Measures.unit(difference.measure()))
        .set(DifferenceColumns.LEVEL, Cell.decimal(numbers.first()))
        .set(DifferenceColumns.BASELINE_LEVEL, Cell.decimal(numbers.second()))
        .set(DifferenceColumns.DIFFERENCE, Measures.cell(estimate))
        .set(DifferenceColumns.METHOD, Measures.method(estimate))
        .set(DifferenceColumns.P, difference.p())
        .set(DifferenceColumns.P_HOLM, difference.holm())
        .set(DifferenceColumns.CORRELATION, numbers.correlation())
        .set(DifferenceColumns.GAIN, numbers.gain())
        .set(DifferenceColumns.DEALS, numbers.deals())
        .set(DifferenceColumns.DISCORDANT, numbers.differing())
        .set(DifferenceColumns.MORE, numbers.more())
        .set(DifferenceColumns.FEWER, numbers.fewer())
        .set(DifferenceColumns.MOST_DISCORDANT, numbers.mostDiffering())
        .set(DifferenceColumns.DETECTABLE, difference.detectable())
        .set(DifferenceColumns.GAMES_TO_NOTICE, noticed(difference));
  }

  /** Only of the win rate, which is what a person counts at the table. */
  private static OptionalDouble noticed(Difference difference) {
    return difference.measure() == Measure.WIN_RATE
        ? difference.numbers().gamesToNotice()
        : OptionalDouble.empty();
  }
}
