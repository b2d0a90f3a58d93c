package org.tallywall.experiments.stats;

import java.math.BigInteger;
import java.util.Optional;

/**
 * What two whole numbers a deal add up to, exactly, for the ratio of their sums: wins with a line
 * among all who aimed at it, when a deal may hold several of either.
 *
 * @param n number of deals
 * @param x sum of the numbers above the line
 * @param y sum of the numbers below the line
 * @param xx sum of the squares of x
 * @param xy sum of the products
 * @param yy sum of the squares of y
 */
public record PairMoments(
    long n, BigInteger x, BigInteger y, BigInteger xx, BigInteger xy, BigInteger yy) {

  /**
   * The ratio of the sums.
   *
   * @return x over y
   * @throws IllegalStateException if y is 0
   */
  public double ratio() {
    if (y.signum() == 0) {
      throw new IllegalStateException("nothing below the line, no ratio");
    }
    return x.doubleValue() / y.doubleValue();
  }

  /**
   * The standard error of the ratio, linearised: the deals' residuals x − ratio · y are summed in
   * squares exactly, over a common denominator (Cochran, Sampling Techniques, 1977, section 2.11;
   * from memory).
   *
   * @return 0 or more
   * @throws IllegalStateException with fewer than two deals, or if y is 0
   */
  public double standardError() {
    if (n < 2 || y.signum() == 0) {
      throw new IllegalStateException("a ratio's error takes two deals and something to divide by");
    }
    BigInteger numerator =
        xx.multiply(y)
            .multiply(y)
            .subtract(BigInteger.TWO.multiply(xy).multiply(x).multiply(y))
            .add(yy.multiply(x).multiply(x));
    double below = y.doubleValue();
    double residuals = numerator.doubleValue() / below / below;
    return Math.sqrt(residuals * n / (n - 1)) / below;
  }

  /**
   * The ratio with its interval: t with n − 1 degrees of freedom.
   *
   * @param confidence the level, between 0 and 1
   * @return the estimate; without limits where there is only one deal, or where no deal strays from
   *     the ratio and so none tells about the spread
   * @throws IllegalStateException if y is 0
   */
  public Estimate estimate(double confidence) {
    double ratio = ratio();
    if (n < 2 || standardError() == 0) {
      return new Estimate(ratio, Optional.empty(), Method.RATIO_OVER_DEALS);
    }
    double half = Moments.quantile(n - 1, confidence) * standardError();
    return Estimate.of(ratio, Interval.around(ratio, half), Method.RATIO_OVER_DEALS);
  }
}
