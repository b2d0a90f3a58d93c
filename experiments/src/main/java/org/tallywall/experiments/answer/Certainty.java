package org.tallywall.experiments.answer;

import java.util.Optional;
import org.tallywall.experiments.stats.Estimate;

/**
 * How sure intervals are, and whether they may be shown: those of a number of deals fixed in
 * advance say nothing of a run that looked at its results.
 *
 * @param confidence the level, between 0 and 1
 * @param fixed whether the number of deals was fixed in advance
 */
public record Certainty(double confidence, boolean fixed) {
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
