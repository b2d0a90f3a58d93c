package org.tallywall.experiments.design.arms;

import java.util.List;
import org.tallywall.experiments.answer.Certainty;
import org.tallywall.experiments.answer.Effects;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.schema.DefenseColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * How often a way of playing came to each step of its defense, and what it gained or lost in the
 * games in which it did so before they went another way than those that it is compared with.
 */
public final class DefenseTable {
  private DefenseTable() {}

  /**
   * The table.
   *
   * @param study the study
   * @param design its ways of playing
   * @param tally what was counted
   * @param certainty how sure ranges are
   * @return a row for each way, step and declared measure
   */
  public static Table of(Study study, ArmsDesign design, StudyTally tally, Certainty certainty) {
    TableBuilder table =
        Table.builder(
                DefenseColumns.FILE,
                "How often each step of the defense came into play, and what was gained or lost"
                    + " where it came before the two games differed")
            .columns(DefenseColumns.all());
    List<String> names = Habits.names();
    int pair = 0;
    for (int arm = 0; arm < design.arms().size(); arm++) {
      if (arm == design.baseline()) {
        continue;
      }
      for (int habit = 0; habit < names.size(); habit++) {
        List<String> who =
            List.of(
                design.arms().get(arm).name(),
                design.arms().get(design.baseline()).name(),
                names.get(habit));
        rows(table, who, tally.firing(pair * names.size() + habit), study, certainty);
      }
      pair++;
    }
    return table.build();
  }

  /**
   * A row for each declared measure; {@code who} is the way, what it is compared with, the step.
   */
  private static void rows(
      TableBuilder table, List<String> who, FiringTally firing, Study study, Certainty certainty) {
    List<Measure> measures = study.question().measures();
    for (int at = 0; at < measures.size(); at++) {
      Measure measure = measures.get(at);
      if (at == 0 || study.question().secondary().contains(measure)) {
        Row row = row(who, firing, measure);
        Effects.set(
            row,
            DefenseColumns.DIFFERENCE,
            DefenseColumns.METHOD,
            Effects.effect(firing, at, measure, certainty));
        table.row(row);
      }
    }
  }

  private static Row row(List<String> who, FiringTally firing, Measure measure) {
    return new Row()
        .set(DefenseColumns.ARM, who.get(0))
        .set(DefenseColumns.BASELINE, who.get(1))
        .set(DefenseColumns.STEP, who.get(2))
        .set(DefenseColumns.SEAT_GAMES, firing.seatGames())
        .set(DefenseColumns.GAMES, firing.games())
        .set(DefenseColumns.MEAN_WALL, Cell.ratio(firing.wall(), firing.games()))
        .set(DefenseColumns.GAMES_COMPARED, firing.compared())
        .set(DefenseColumns.DEALS_COMPARED, firing.reached())
        .set(DefenseColumns.MEASURE, measure.text())
        .set(DefenseColumns.UNIT, Measures.unit(measure));
  }
}
