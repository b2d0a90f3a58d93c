package org.tallywall.experiments.stats;

/** How many deals a difference takes, and how small a difference some deals can find. */
public final class SampleSize {
  private SampleSize() {}

  /**
   * Games of each side that find a difference of two shares on different deals.
   *
   * @param first one share
   * @param second the other share
   * @param alpha chance of a false finding, both sides together
   * @param power chance to find it
   * @return the number for each side, not rounded
   */
  public static double unpaired(double first, double second, double alpha, double power) {
    double middle = (first + second) / 2;
    double root =
        Normal.quantile(1 - alpha / 2) * Math.sqrt(2 * middle * (1 - middle))
            + Normal.quantile(power) * Math.sqrt(first * (1 - first) + second * (1 - second));
    return root * root / ((first - second) * (first - second));
  }

  /**
   * The smallest true difference that a study would have noticed with the given power.
   *
   * @param standardError standard error of the difference
   * @param alpha chance of a false finding, both sides together
   * @param power chance to find it
   * @return the difference, in the unit of the standard error
   */
  public static double detectable(double standardError, double alpha, double power) {
    return (Normal.quantile(1 - alpha / 2) + Normal.quantile(power)) * standardError;
  }

  /**
   * The smallest true difference whose range leaves out 0 with the given power, where the range is
   * not that of the standard error.
   *
   * @param half half the width of the range
   * @param standardError standard error of the difference
   * @param power chance to find it
   * @return the difference, in the unit of both
   */
  public static double detectableBeyond(double half, double standardError, double power) {
    return half + Normal.quantile(power) * standardError;
  }
}
