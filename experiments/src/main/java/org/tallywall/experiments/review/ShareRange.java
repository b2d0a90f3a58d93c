package org.tallywall.experiments.review;

import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.util.FastMath;

/**
 * The range of a share that holds at every look: all shares whose density after the games, from an
 * even one before them, is not below the level (Robbins, Annals of Mathematical Statistics 41,
 * 1970, 1397–1409, for the mixture; Waudby-Smith and Ramdas, "Confidence sequences for sampling
 * without replacement", NeurIPS 2020, for the ratio of prior to posterior). It needs no number of
 * games to be near enough to normal, so it holds where nothing, or everything, succeeded, too.
 */
final class ShareRange {
  private static final int STEPS = 60;

  private ShareRange() {}

  /**
   * The range.
   *
   * @param successes games that count, 0 to {@code games}
   * @param games games in all, 0 or more
   * @param alpha chance to miss the truth ever
   * @return the share with its range, within 0 and 1
   */
  static Ranged of(long successes, long games, double alpha) {
    if (games == 0) {
      return new Ranged(0, 0, 1);
    }
    double share = (double) successes / games;
    double least = FastMath.log(alpha) + Beta.logBeta(successes + 1.0, games - successes + 1.0);
    double low = successes == 0 ? 0 : edge(successes, games, least, 0, share);
    double high = successes == games ? 1 : edge(successes, games, least, 1, share);
    return new Ranged(share, low, high);
  }

  /** Where the density comes down to the level, between a point outside and one inside. */
  private static double edge(
      long successes, long games, double least, double outside, double inside) {
    double out = outside;
    double in = inside;
    for (int step = 0; step < STEPS; step++) {
      double middle = (out + in) / 2;
      if (density(successes, games - successes, middle) < least) {
        out = middle;
      } else {
        in = middle;
      }
    }
    return out;
  }

  private static double density(long successes, long failures, double share) {
    return (successes == 0 ? 0 : successes * FastMath.log(share))
        + (failures == 0 ? 0 : failures * FastMath.log1p(-share));
  }
}
