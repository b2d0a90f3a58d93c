package org.tallywall.experiments.design.arms;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.experiments.answer.StudyAnswer;
import org.tallywall.experiments.answer.Way;
import org.tallywall.experiments.deals.DealPlayer;
import org.tallywall.experiments.deals.Tables;
import org.tallywall.experiments.design.Noticed;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.design.StudyGame;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyPlan;
import org.tallywall.reports.table.Table;

/** A design that compares ways of playing on the same deals. */
public interface Comparison extends PlayedDesign {
  /**
   * What is compared.
   *
   * @return the ways of playing, their baseline and who sits with them
   */
  ArmsDesign ways();

  /**
   * A way of playing for readers.
   *
   * @param arm what the study calls it
   * @return what readers see
   */
  default String label(String arm) {
    return arm;
  }

  @Override
  default TallyPlan plan(int measures) {
    int arms = ways().arms().size();
    int pairs = arms - 1;
    return new TallyPlan(arms, pairs, pairs * Habits.names().size(), measures, 0);
  }

  @Override
  default DealPlayer deals(Study study, Tables tables) {
    return new ArmDeals(study, ways(), tables);
  }

  @Override
  default boolean comparesCourses() {
    return true;
  }

  @Override
  default StudyGame game(long deal, String arm, Integer seat) {
    return ways().game(arm, seat);
  }

  @Override
  default List<Integer> seats() {
    return ways().seats();
  }

  @Override
  default List<Way> ways(StudyTally tally) {
    return Way.of(ways().arms(), seats(), tally);
  }

  @Override
  default List<Noticed> notices(Study study, StudyTally known) {
    return Noticeable.of(study, ways(), known);
  }

  @Override
  default List<Table> tables(StudyAnswer answer) {
    List<Table> tables = new ArrayList<>();
    tables.add(Differences.of(Difference.of(answer, ways())));
    answer.stopping().ifPresent(rule -> tables.add(StoppingTable.of(answer.study(), ways(), rule)));
    tables.add(DefenseTable.of(answer.study(), ways(), answer.tally(), answer.certainty()));
    tables.add(WayTable.of(ways()));
    return tables;
  }
}
