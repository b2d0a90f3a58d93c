package org.tallywall.experiments.stats;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;

/**
 * A share of independent trials: one game a deal, won or not.
 *
 * @param successes trials that succeeded, 0 to {@code trials}
 * @param trials trials in all, 1 to 2,147,483,647
 */
public record Proportion(long successes, long trials) {
  /** Accuracy of the inverse of a beta distribution; the library's own 1e-9 shows in the tables. */
  private static final double ACCURACY = 1e-14;

  /**
   * Checks the counts.
   *
   * @param successes trials that succeeded
   * @param trials trials in all
   * @throws IllegalArgumentException if a count is out of its range
   */
  public Proportion {
    if (trials < 1 || trials > Integer.MAX_VALUE || successes < 0 || successes > trials) {
      throw new IllegalArgumentException("no proportion: " + successes + " of " + trials);
    }
  }

  /**
   * The share itself.
   *
   * @return 0 to 1
   */
  public double share() {
    return (double) successes / trials;
  }

  /**
   * Wilson's score interval (Wilson, JASA 22, 1927, 209–212).
   *
   * @param confidence the level, between 0 and 1
   * @return limits within 0 and 1; exactly 0 where nothing succeeded, exactly 1 where all did
   */
  public Interval wilson(double confidence) {
    ConfidenceInterval limits =
        new WilsonScoreInterval().createInterval((int) trials, (int) successes, confidence);
    return new Interval(
        successes == 0 ? 0 : limits.getLowerBound(),
        successes == trials ? 1 : limits.getUpperBound());
  }

  /**
   * The exact interval (Clopper and Pearson, Biometrika 26, 1934, 404–413). It is never too short,
   * and so wider than Wilson's.
   *
   * @param confidence the level, between 0 and 1
   * @return limits within 0 and 1; exactly 0 where nothing succeeded, exactly 1 where all did
   */
  public Interval clopperPearson(double confidence) {
    double tail = (1 - confidence) / 2;
    double low = successes == 0 ? 0 : beta(successes, trials - successes + 1.0, tail);
    double high =
        successes == trials ? 1 : beta(successes + 1.0, (double) trials - successes, 1 - tail);
    return new Interval(low, high);
  }

  private static double beta(double a, double b, double probability) {
    return new BetaDistribution(null, a, b, ACCURACY).inverseCumulativeProbability(probability);
  }

  /**
   * The share with the interval that suits its counts: the exact one where trials are few or all
   * went one way, else Wilson's.
   *
   * @param confidence the level, between 0 and 1
   * @return the estimate
   */
  public Estimate estimate(double confidence) {
    boolean exact = trials < 100 || successes == 0 || successes == trials;
    return exact
        ? Estimate.of(share(), clopperPearson(confidence), Method.CLOPPER_PEARSON)
        : Estimate.of(share(), wilson(confidence), Method.WILSON);
  }
}
