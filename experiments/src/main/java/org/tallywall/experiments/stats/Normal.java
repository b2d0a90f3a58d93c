package org.tallywall.experiments.stats;

import org.apache.commons.math3.distribution.NormalDistribution;

/** The standard normal distribution. */
final class Normal {
  private Normal() {}

  /**
   * The value below which a share lies.
   *
   * @param share between 0 and 1
   * @return the quantile
   */
  static double quantile(double share) {
    return new NormalDistribution(null, 0, 1, 1e-14).inverseCumulativeProbability(share);
  }
}
