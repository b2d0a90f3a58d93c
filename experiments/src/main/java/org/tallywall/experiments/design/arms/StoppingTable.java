package org.tallywall.experiments.design.arms;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.stop.Stopping;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Extent;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.Until;
import org.tallywall.reports.schema.StoppingColumns;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** By which rule a run could stop early, where it did, and what a sequential test said. */
final class StoppingTable {
  private StoppingTable() {}

  static Table of(Study study, ArmsDesign arms, Stopping stopping) {
    TableBuilder table =
        Table.builder(StoppingColumns.FILE, "By which rule the run ended, and where")
            .columns(StoppingColumns.all());
    int pair = 0;
    for (Arm arm : arms.arms()) {
      if (arm != arms.arms().get(arms.baseline())) {
        String baseline = arms.arms().get(arms.baseline()).name();
        table.row(row(study, stopping, List.of(arm.name(), baseline), pair++));
      }
    }
    return table.build();
  }

  private static Row row(Study study, Stopping stopping, List<String> who, int pair) {
    Until until = stopping.until();
    Optional<Until.Test> test = until.test();
    Extent extent = study.extent();
    long pilot = stopping.pilots() ? extent.blockSize() : 0;
    long end = Math.min(pilot + stopping.looks() * extent.blockSize(), extent.deals());
    boolean reached = stopping.decision() == Stopping.Decision.REACHED;
    Measure primary = study.question().measures().get(0);
    return new Row()
        .set(StoppingColumns.ARM, who.get(0))
        .set(StoppingColumns.BASELINE, who.get(1))
        .set(StoppingColumns.MEASURE, primary.text())
        .set(StoppingColumns.RULE, until.rule().text())
        .set(StoppingColumns.GOAL, test.isPresent() ? "verdict" : goal(until))
        .set(StoppingColumns.UNIT, Measures.unit(primary))
        .set(StoppingColumns.SIZE, size(until))
        .set(StoppingColumns.FALSE_ALARM, chance(test, Until.Test::falseAlarm))
        .set(StoppingColumns.MISS, chance(test, Until.Test::miss))
        .set(StoppingColumns.AT_MOST, extent.deals())
        .set(StoppingColumns.EVERY, extent.blockSize())
        .set(StoppingColumns.LOOKS, stopping.looks())
        .set(StoppingColumns.PILOT, pilot)
        .set(StoppingColumns.FIRST_DEAL, pilot)
        .set(StoppingColumns.LAST_DEAL, end - 1)
        .set(StoppingColumns.REACHED, reached ? "yes" : "no")
        .set(StoppingColumns.VERDICT, test.isPresent() ? stopping.verdict(pair).text() : "");
  }

  private static OptionalDouble chance(
      Optional<Until.Test> test, ToDoubleFunction<Until.Test> which) {
    return test.isPresent()
        ? OptionalDouble.of(which.applyAsDouble(test.get()))
        : OptionalDouble.empty();
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
