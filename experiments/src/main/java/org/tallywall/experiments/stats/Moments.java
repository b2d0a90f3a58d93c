package org.tallywall.experiments.stats;

import java.math.BigInteger;
import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * What one whole number a deal adds up to, exactly: the value of each deal may itself be a sum over
 * its games. Doubles come in with the last formula only, so the parts of a run may be added in any
 * order.
 *
 * @param n number of deals
 * @param sum sum of the values
 * @param squares sum of their squares
 */
public record Moments(long n, BigInteger sum, BigInteger squares) {
  /** Accuracy of the inverse of a t distribution. */
  private static final double ACCURACY = 1e-14;

  /**
   * The moments of a few values.
   *
   * @param values one value a deal
   * @return their moments
   */
  public static Moments of(long... values) {
    BigInteger sum = BigInteger.ZERO;
    BigInteger squares = BigInteger.ZERO;
    for (long value : values) {
      BigInteger exact = BigInteger.valueOf(value);
      sum = sum.add(exact);
      squares = squares.add(exact.multiply(exact));
    }
    return new Moments(values.length, sum, squares);
  }

  /**
   * The mean.
   *
   * @return the sum divided by the number of deals
   * @throws IllegalStateException without deals
   */
  public double mean() {
    if (n < 1) {
      throw new IllegalStateException("no deals, no mean");
    }
    return sum.doubleValue() / n;
  }

  /**
   * The variance with divisor n − 1. Its numerator is exact, so nothing cancels.
   *
   * @return 0 or more
   * @throws IllegalStateException with fewer than two deals
   */
  public double variance() {
    if (n < 2) {
      throw new IllegalStateException("a variance takes two deals");
    }
    BigInteger numerator = squares.multiply(BigInteger.valueOf(n)).subtract(sum.multiply(sum));
    return numerator.doubleValue() / n / (n - 1);
  }

  /**
   * The standard error of the mean.
   *
   * @return 0 or more
   * @throws IllegalStateException with fewer than two deals
   */
  public double standardError() {
    return Math.sqrt(variance() / n);
  }

  /**
   * The mean with Student's t interval (Student, Biometrika 6, 1908, 1–25).
   *
   * @param confidence the level, between 0 and 1
   * @param games games that each value sums up; the mean is given per game
   * @return the estimate; without limits where there is only one deal, or all deals have the same
   *     value and so tell nothing about the spread
   * @throws IllegalStateException without deals
   */
  public Estimate estimate(double confidence, int games) {
    double value = mean() / games;
    if (n < 2 || variance() == 0) {
      return new Estimate(value, Optional.empty(), Method.T_OVER_DEALS);
    }
    double half = quantile(n - 1, confidence) * standardError() / games;
    return Estimate.of(value, Interval.around(value, half), Method.T_OVER_DEALS);
  }

  /**
   * The quantile that a two-sided t interval takes.
   *
   * @param degrees degrees of freedom, 1 or more
   * @param confidence the level, between 0 and 1
   * @return the quantile, above 0
   */
  static double quantile(long degrees, double confidence) {
    return new TDistribution(null, degrees, ACCURACY)
        .inverseCumulativeProbability(1 - (1 - confidence) / 2);
  }
}
