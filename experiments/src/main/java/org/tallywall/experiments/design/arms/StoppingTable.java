package org.tallywall.experiments.design.arms;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.stop.Stopping;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Extent;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.Until;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** By which rule a run could stop early, where it did, and what a sequential test said. */
final class StoppingTable {
  private StoppingTable() {}

  private static List<Column> columns() {
    return List.of(
        Column.text("arm", "The way of playing."),
        Column.text("baseline", "The way that it is compared with."),
        Column.text("measure", "What the rule looks at: the primary measure."),
        Column.text(
            "rule",
            "\"always-valid\": a range that holds at every look; \"sprt\": Wald's sequential test."),
        Column.text(
            "goal",
            "\"half-width\": a range that reaches no further to either side than \"size\";"
                + " \"clear\": a range that leaves out 0; \"verdict\": the test has decided."),
        Column.text("unit", "\"share of games\", or \"per game\"."),
        Column.decimal(
            "size", "as in unit", "The half-width asked for, or the difference worth finding."),
        Column.decimal(
            "false-alarm",
            "chance",
            "Chance, at most, that the test finds more or fewer where the two are equal."),
        Column.decimal(
            "miss",
            "chance",
            "Chance, at most, that it says \"none of that size\" where there is one."),
        Column.integer("at-most", "deals", "Deals after which it stopped at the latest."),
        Column.integer("every", "deals", "Deals from one look to the next."),
        Column.integer("looks", "looks", "How often it looked."),
        Column.integer(
            "pilot", "deals", "First deals, which only told what to expect and are left out."),
        Column.integer("first-deal", "deal", "The first deal that counts; the seed's first is 0."),
        Column.integer("last-deal", "deal", "The last deal that counts."),
        Column.text("reached", "Whether the run came to its goal, for all comparisons."),
        Column.text(
            "verdict",
            "What the test says of the way: \"more\", \"fewer\", \"none of that size\" or"
                + " \"undecided\"; empty by the other rule."));
  }

  static Table of(Study study, ArmsDesign arms, Stopping stopping) {
    TableBuilder table =
        Table.builder("stopping", "By which rule the run ended, and where").columns(columns());
    int pair = 0;
    for (Arm arm : arms.arms()) {
      if (arm != arms.arms().get(arms.baseline())) {
        String baseline = arms.arms().get(arms.baseline()).name();
        table.row(row(study, stopping, List.of(arm.name(), baseline), pair++));
      }
    }
    return table.build();
  }

  private static List<Cell> row(Study study, Stopping stopping, List<String> who, int pair) {
    Until until = stopping.until();
    Optional<Until.Test> test = until.test();
    Extent extent = study.extent();
    long pilot = stopping.pilots() ? extent.blockSize() : 0;
    long end = Math.min(pilot + stopping.looks() * extent.blockSize(), extent.deals());
    boolean reached = stopping.decision() == Stopping.Decision.REACHED;
    return List.of(
        Cell.text(who.get(0)),
        Cell.text(who.get(1)),
        Cell.text(study.question().measures().get(0).text()),
        Cell.text(until.rule().text()),
        Cell.text(test.isPresent() ? "verdict" : goal(until)),
        Cell.text(Measures.unit(study.question().measures().get(0))),
        Cell.decimal(size(until)),
        test.map(one -> Cell.decimal(one.falseAlarm())).orElse(Cell.empty()),
        test.map(one -> Cell.decimal(one.miss())).orElse(Cell.empty()),
        Cell.whole(extent.deals()),
        Cell.whole(extent.blockSize()),
        Cell.whole(stopping.looks()),
        Cell.whole(pilot),
        Cell.whole(pilot),
        Cell.whole(end - 1),
        Cell.text(reached ? "yes" : "no"),
        test.map(one -> Cell.text(stopping.verdict(pair).text())).orElse(Cell.empty()));
  }

  private static String goal(Until until) {
    return until.goal() == Until.Goal.HALF_WIDTH ? "half-width" : "clear";
  }

  private static OptionalDouble size(Until until) {
    if (until.test().isPresent()) {
      return OptionalDouble.of(until.test().get().difference());
    }
    return until.goal() == Until.Goal.HALF_WIDTH
        ? OptionalDouble.of(until.halfWidth())
        : OptionalDouble.empty();
  }
}
