package org.tallywall.experiments.run;

import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.RoundRobinTables;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.TallyPlan;

/** What is counted in each design. */
public final class Plans {
  private Plans() {}

  /**
   * What a study counts.
   *
   * @param study the study
   * @return the plan
   */
  public static TallyPlan of(Study study) {
    int measures = Measure.values().length;
    Design design = study.design();
    if (design instanceof Design.Comparison comparison) {
      return arms(comparison.ways(), measures);
    } else if (design instanceof Design.RoundRobin everyone) {
      int players = everyone.players().size();
      return new TallyPlan(players, 0, 0, measures, new RoundRobinTables(players).count());
    } else if (design instanceof Design.Branch branch) {
      int squares = branch.cells().count() * (branch.options().size() - 1);
      return new TallyPlan(1, 0, squares, measures, 0);
    }
    return new TallyPlan(1, 0, 0, measures, 0);
  }

  private static TallyPlan arms(Design.Arms design, int measures) {
    int pairs = design.arms().size() - 1;
    return new TallyPlan(design.arms().size(), pairs, pairs * Habits.names().size(), measures, 0);
  }

  /** Whether courses of games are compared. */
  static boolean compares(Design design) {
    return design instanceof Design.Comparison;
  }
}
