package org.tallywall.experiments.answer;

import java.util.Optional;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.reports.schema.BranchColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Row;

/**
 * What a habit, or an option at a decision, does where it comes into play, and there alone: the
 * ratio of the summed differences to the games concerned, its standard error made linear over
 * deals.
 */
public final class Effects {
  /** With fewer deals than this nothing is said. */
  public static final int FEW = BranchColumns.FEW;

  private static final String TOO_FEW = "too few";

  private Effects() {}

  /**
   * The effect where it came into play.
   *
   * @param firing what was counted
   * @param at the measure's place in the study
   * @param measure the measure
   * @param certainty how sure ranges are
   * @return the effect a game; empty where it came into play too rarely to say
   */
  public static Optional<Effect> effect(
      FiringTally firing, int at, Measure measure, Certainty certainty) {
    return firing.reached() < FEW
        ? Optional.empty()
        : Optional.of(Effect.of(firing, at, measure, certainty));
  }

  /**
   * Sets the cells of an effect.
   *
   * @param row the row
   * @param difference the column of its value and range
   * @param method the column of how the range was computed, or why there is none
   * @param effect the effect
   */
  public static void set(Row row, Column difference, Column method, Optional<Effect> effect) {
    row.set(difference, effect.map(Effect::estimate).map(Measures::cell).orElse(Cell.empty()))
        .set(method, effect.map(Effect::method).orElse(Cell.text(TOO_FEW)));
  }
}
