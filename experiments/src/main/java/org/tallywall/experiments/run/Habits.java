package org.tallywall.experiments.run;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.strategies.habit.Stance;

/**
 * Which habits of an arm are followed, and the games in which they came into play: any difference
 * at all in the course of the game, then each step of the defence.
 */
public final class Habits {
  private final int measures;

  Habits(int measures) {
    this.measures = measures;
  }

  /**
   * The names of the habits followed in each comparison.
   *
   * @return "played differently", then the steps of the defence
   */
  public static List<String> names() {
    List<String> names = new ArrayList<>();
    names.add("played-differently");
    for (Stance step : Stance.values()) {
      names.add(step.text());
    }
    return names;
  }

  /** Counts one deal of a comparison. */
  void compare(int pair, ArmGame[] arm, ArmGame[] baseline, StudyTally into) {
    int habits = 1 + Stance.values().length;
    for (int habit = 0; habit < habits; habit++) {
      int fired = 0;
      long wall = 0;
      long[] differences = new long[measures];
      for (int at = 0; at < arm.length; at++) {
        int first = habit == 0 ? parting(arm[at], baseline[at]) : arm[at].stepWalls()[habit - 1];
        if (first != StanceListener.NEVER) {
          fired++;
          wall += first;
          for (int measure = 0; measure < measures; measure++) {
            differences[measure] += arm[at].values()[measure] - baseline[at].values()[measure];
          }
        }
      }
      into.firing(pair * habits + habit).addDeal(arm.length, fired, wall, differences);
    }
  }

  private static int parting(ArmGame arm, ArmGame baseline) {
    int event = arm.course().parts(baseline.course());
    return event == Course.NONE ? StanceListener.NEVER : arm.course().wallAfter(event);
  }
}
