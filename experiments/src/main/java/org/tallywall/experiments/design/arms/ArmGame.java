package org.tallywall.experiments.design.arms;

import java.util.List;
import org.tallywall.experiments.deals.Course;
import org.tallywall.experiments.deals.StanceListener;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.tally.SeatGame;
import org.tallywall.strategies.habit.Stance;

/**
 * What a studied seat made of one game.
 *
 * @param values the number that each measure of the study counts
 * @param course the course of the game
 * @param steps the event at which the seat first came to each step of its defense, or {@link
 *     StanceListener#NEVER}
 */
record ArmGame(long[] values, Course course, int[] steps) {
  static ArmGame of(
      SeatGame game, List<Measure> measures, Course course, StanceListener stances, int seat) {
    long[] values = new long[measures.size()];
    for (int at = 0; at < values.length; at++) {
      values[at] = game.value(measures.get(at));
    }
    int[] steps = new int[Stance.values().length];
    for (Stance step : Stance.values()) {
      steps[step.ordinal()] = stances.first(seat, step);
    }
    return new ArmGame(values, course, steps);
  }
}
