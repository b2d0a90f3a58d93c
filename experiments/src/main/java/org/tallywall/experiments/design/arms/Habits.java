package org.tallywall.experiments.design.arms;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.experiments.deals.Course;
import org.tallywall.experiments.deals.StanceListener;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.strategies.habit.Stance;

/**
 * Which habits of an arm are followed, and the games in which they came into play: any difference
 * at all in the course of the game, then each step of the defense.
 *
 * <p>A step is compared only where the arm came to it before its game and the baseline's went
 * apart. What happened up to there is common to both games, so these games are chosen by nothing
 * that one of the two did. Games in which the step came later are chosen by how the arm's own game
 * went on, good luck or bad, and two players alike in everything would differ in them.
 */
public final class Habits {
  /** Every step but the first, in which a player plays its own hand. */
  private static final List<Stance> STEPS =
      Arrays.stream(Stance.values()).filter(step -> step != Stance.OWN_HAND).toList();

  private final int measures;

  Habits(int measures) {
    this.measures = measures;
  }

  /**
   * The names of the habits followed in each comparison.
   *
   * @return "played differently", then the steps of the defense
   */
  public static List<String> names() {
    List<String> names = new ArrayList<>();
    names.add("played-differently");
    for (Stance step : STEPS) {
      names.add(step.text());
    }
    return names;
  }

  /** Counts one deal of a comparison. */
  void compare(int pair, ArmGame[] arm, ArmGame[] baseline, StudyTally into) {
    int habits = 1 + STEPS.size();
    for (int habit = 0; habit < habits; habit++) {
      int fired = 0;
      int alike = 0;
      long wall = 0;
      long[] differences = new long[measures];
      for (int at = 0; at < arm.length; at++) {
        int first = habit == 0 ? parting(arm[at], baseline[at]) : step(arm[at], habit - 1);
        if (first == StanceListener.NEVER) {
          continue;
        }
        fired++;
        wall += arm[at].course().wallAfter(first);
        if (habit == 0 || arm[at].course().discardsAlike(baseline[at].course(), first)) {
          alike++;
          addDifferences(arm[at], baseline[at], differences);
        }
      }
      into.firing(pair * habits + habit).addDeal(arm.length, fired, wall, alike, differences);
    }
  }

  private static void addDifferences(ArmGame arm, ArmGame baseline, long[] into) {
    for (int measure = 0; measure < into.length; measure++) {
      into[measure] += arm.values()[measure] - baseline.values()[measure];
    }
  }

  private static int step(ArmGame game, int step) {
    return game.steps()[STEPS.get(step).ordinal()];
  }

  private static int parting(ArmGame arm, ArmGame baseline) {
    int event = arm.course().parts(baseline.course());
    return event == Course.NONE ? StanceListener.NEVER : event;
  }
}
