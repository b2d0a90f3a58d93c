package org.tallywall.experiments.answer;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.EveryLook;

/**
 * How sure intervals are, and whether they may be shown: those of a number of deals fixed in
 * advance say nothing of a run that looked at its results.
 *
 * @param confidence the level of each range, between 0 and 1
 * @param fixed whether ranges may be shown that are those of a fixed number of deals, taken at this
 *     level
 * @param look what makes p-values hold at every look; empty where the number of deals was fixed in
 *     advance
 */
public record Certainty(double confidence, boolean fixed, Optional<EveryLook> look) {
  /**
   * Of a run whose number of deals was fixed in advance, or that has ranges of its own.
   *
   * @param confidence the level, between 0 and 1
   * @param fixed whether the number of deals was fixed in advance
   */
  public Certainty(double confidence, boolean fixed) {
    this(confidence, fixed, Optional.empty());
  }

  /**
   * Of a run that somebody looked at before its end, or whose end was moved.
   *
   * @param look the look
   * @return ranges that hold at every look at once
   */
  static Certainty at(EveryLook look) {
    double level = look.level();
    return new Certainty(level, level < 1, Optional.of(look));
  }

  /**
   * A p-value as it may be shown.
   *
   * @param p the p-value of a fixed number of deals, where there is one
   * @return the same, or one that holds at every look
   */
  public OptionalDouble chance(OptionalDouble p) {
    return p.isPresent() && look.isPresent()
        ? OptionalDouble.of(look.get().chance(p.getAsDouble()))
        : p;
  }

  /**
   * The estimate, without its interval where that may not be shown.
   *
   * @param estimate the estimate
   * @return what may be shown of it
   */
  public Estimate shown(Estimate estimate) {
    return fixed ? estimate : new Estimate(estimate.value(), Optional.empty(), estimate.method());
  }
}
