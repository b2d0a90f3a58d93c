package org.tallywall.experiments.design.arms;

import java.util.List;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** The ways of playing against the one that they are compared with, on the same deals. */
public final class Differences {
  private Differences() {}

  private static List<Column> columns() {
    return List.of(
        Column.text("arm", "The way of playing."),
        Column.text("baseline", "The way that it is compared with."),
        Column.text("measure", "What is measured."),
        Column.text(
            "role",
            "\"primary\" answers the question; \"secondary\" was declared before the run;"
                + " \"exploratory\" was not, and proves nothing."),
        Column.text("unit", "\"share of games\", or \"per game\"."),
        Column.decimal("level", "as in unit", "The way's own mean a game."),
        Column.decimal("baseline-level", "as in unit", "The mean of the way compared with."),
        Column.decimalInterval(
            "difference",
            "as in unit",
            "Mean of the differences on the same deals. The limits are empty where too few deals"
                + " differ to give any: fewer than 10 and fewer than half, of a measure without"
                + " bounds."),
        Column.text(
            "method",
            "How the interval of the difference was computed; \"Clopper-Pearson by size\", which is"
                + " exact, where fewer than 10 deals differ, and fewer than half."),
        Column.decimal(
            "p",
            "chance",
            "Chance of so large a difference by luck alone, where a test was declared."),
        Column.decimal(
            "p-holm",
            "chance",
            "The same by Holm, for all declared comparisons of the study, primary and secondary,"
                + " taken together."),
        Column.decimal(
            "correlation", "-1 to 1", "How alike the two ways' games on the same deal go."),
        Column.decimal(
            "gain", "times", "How many times as many deals would be needed without pairing."),
        Column.integer("deals", "deals", "Deals compared."),
        Column.integer("discordant", "deals", "Deals in which it made a difference in any seat."),
        Column.integer("more", "deals", "Deals in which the way had more, all its seats together."),
        Column.integer(
            "fewer",
            "deals",
            "Deals in which it had fewer; in the rest of \"discordant\" its seats cancel."),
        Column.decimal(
            "detectable",
            "as in unit",
            "The smallest true gap that so many deals would have noticed in nine runs of ten, the"
                + " allowance for chance findings shared evenly among all declared comparisons; of"
                + " a run that could stop early, by the range that it ended with. Empty where fewer"
                + " than 10 deals differ, and fewer than half."));
  }

  /**
   * The table.
   *
   * @param differences all comparisons of a study
   * @return a row each
   */
  public static Table of(List<Difference> differences) {
    TableBuilder table =
        Table.builder("differences", "Each way of playing against the one it is compared with")
            .columns(columns());
    for (Difference difference : differences) {
      PairNumbers numbers = difference.numbers();
      Estimate estimate = difference.estimate();
      table.row(
          Cell.text(difference.arm()),
          Cell.text(difference.baseline()),
          Cell.text(difference.measure().text()),
          Cell.text(difference.role().text()),
          Cell.text(Measures.unit(difference.measure())),
          Cell.decimal(numbers.first()),
          Cell.decimal(numbers.second()),
          Measures.cell(estimate),
          Measures.method(estimate),
          Cell.decimal(difference.p()),
          Cell.decimal(difference.holm()),
          Cell.decimal(numbers.correlation()),
          Cell.decimal(numbers.gain()),
          Cell.whole(numbers.deals()),
          Cell.whole(numbers.differing()),
          Cell.whole(numbers.more()),
          Cell.whole(numbers.fewer()),
          Cell.decimal(difference.detectable()));
    }
    return table.build();
  }
}
