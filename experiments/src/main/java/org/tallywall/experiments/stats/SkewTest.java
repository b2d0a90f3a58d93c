package org.tallywall.experiments.stats;

import java.math.BigInteger;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Whether a ratio of sums over deals is 0, for numbers of which some are rare and large. Where a
 * loss is rarer but larger than a gain, t calls too much clear, the more so the smaller the level
 * is that many tests at once leave to each. So t is taken once as it is and once with its skewness
 * removed (Hall, Journal of the Royal Statistical Society B 54, 1992, 221–228; from memory), and
 * the larger p-value counts.
 *
 * @param moments sums and squares
 * @param xxx sum of the cubes of x
 * @param xxy sum of x · x · y
 * @param xyy sum of x · y · y
 * @param yyy sum of the cubes of y
 */
public record SkewTest(
    PairMoments moments, BigInteger xxx, BigInteger xxy, BigInteger xyy, BigInteger yyy) {

  /**
   * The p-value.
   *
   * @return two-sided
   * @throws IllegalStateException with fewer than two deals, or without any spread
   */
  public double p() {
    double error = moments.standardError();
    if (error == 0) {
      throw new IllegalStateException("without spread there is no test");
    }
    double t = moments.ratio() / error;
    double n = moments.n();
    double mean = t / Math.sqrt(n);
    double skewness = skewness();
    double steep = skewness * mean / 3;
    double straight = Math.sqrt(n) * (mean * (1 + steep + steep * steep / 3) + skewness / (6 * n));
    return Math.max(tail(t), tail(straight));
  }

  /** Of the residuals x − ratio · y. */
  double skewness() {
    double ratio = moments.ratio();
    double n = moments.n();
    double cubes =
        xxx.doubleValue()
            - 3 * ratio * xxy.doubleValue()
            + 3 * ratio * ratio * xyy.doubleValue()
            - ratio * ratio * ratio * yyy.doubleValue();
    double error = moments.standardError() * moments.y().doubleValue();
    double variance = error * error * (n - 1) / n / n;
    return cubes / n / (variance * Math.sqrt(variance));
  }

  private double tail(double t) {
    double below = new TDistribution(null, moments.n() - 1.0).cumulativeProbability(-Math.abs(t));
    return Math.min(1, 2 * below);
  }
}
