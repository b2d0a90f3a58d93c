package org.tallywall.experiments.design.arms;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.experiments.answer.Certainty;
import org.tallywall.experiments.answer.Effects;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** What each step of the defence of a way of playing did where it came into play. */
public final class DefenceTable {
  private DefenceTable() {}

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
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.text("arm", "The way of playing."),
                Column.text("baseline", "The way that it is compared with."),
                Column.text(
                    "step",
                    "\"played-differently\" for games that went another way than the same game of"
                        + " the way compared with; else the step of the defence that the studied"
                        + " player came to.")));
    columns.addAll(Effects.columns("the step came into play"));
    TableBuilder table =
        Table.builder(
                "defence", "How often each step of the defence came into play, and what it did")
            .columns(columns);
    List<String> names = Habits.names();
    int pair = 0;
    for (int arm = 0; arm < design.arms().size(); arm++) {
      if (arm == design.baseline()) {
        continue;
      }
      for (int habit = 0; habit < names.size(); habit++) {
        List<Cell> who =
            List.of(
                Cell.text(design.arms().get(arm).name()),
                Cell.text(design.arms().get(design.baseline()).name()),
                Cell.text(names.get(habit)));
        Effects.rows(table, who, tally.firing(pair * names.size() + habit), study, certainty);
      }
      pair++;
    }
    return table.build();
  }
}
