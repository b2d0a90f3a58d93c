package org.tallywall.experiments.stats;

import org.apache.commons.math3.util.FastMath;

/**
 * Wald's sequential test (Annals of Mathematical Statistics 16, 1945, 117–186) of a mean of values
 * from −1 to 1: none against one worth finding. Where a deal counts for 1, 0 or −1, the factor that
 * a deal puts to the likelihood ratio is 1 + stake × value, with the stake of {@code difference}
 * over the share of deals that differ; for deals that sum up several seats the same factor has,
 * without any further assumption, the mean 1 where the true mean is 0 (Waudby-Smith and Ramdas,
 * "Estimating means of bounded random variables by betting", Journal of the Royal Statistical
 * Society B 86, 2024, 1–27). The product of such factors ever exceeds 1 / a with chance a at most
 * (Ville 1939), so the errors are bounded at whatever moment one looks and however badly the
 * variance was foreseen; Wald's own bounds (1 − b) / a and b / (1 − a) are approximate.
 *
 * @param difference the mean worth finding, above 0 and below 1
 * @param falseAlarm chance to find more where there is none
 * @param miss chance to find no such mean where there is one
 * @param square the square of a deal's value that is expected, above 0; it decides only how soon
 *     the test ends
 */
public record SequentialTest(double difference, double falseAlarm, double miss, double square) {
  /** No deal takes more than this part of what was won before. */
  private static final double MOST = 0.75;

  /**
   * The logarithm of what a deal puts to the evidence that there is more than nothing.
   *
   * @param value the deal's value, −1 to 1
   * @return the logarithm
   */
  public double forMore(double value) {
    return FastMath.log1p(Math.min(MOST, difference / square) * value);
  }

  /**
   * The logarithm of what a deal puts to the evidence that there is less than the mean worth
   * finding.
   *
   * @param value the deal's value, −1 to 1
   * @return the logarithm
   */
  public double againstMore(double value) {
    double stake = Math.min(MOST, difference / (square + difference * difference));
    return FastMath.log1p(stake * (difference - value));
  }

  /**
   * From where on there is more than nothing.
   *
   * @return a logarithm above 0
   */
  public double found() {
    return -FastMath.log(falseAlarm);
  }

  /**
   * From where on there is less than the mean worth finding.
   *
   * @return a logarithm above 0
   */
  public double ruledOut() {
    return -FastMath.log(miss);
  }
}
