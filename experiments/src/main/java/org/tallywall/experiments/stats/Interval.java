package org.tallywall.experiments.stats;

/**
 * The limits between which a true value is believed to lie.
 *
 * @param low lower limit
 * @param high upper limit, not below {@code low}
 */
public record Interval(double low, double high) {
  /**
   * Checks the order of the limits.
   *
   * @param low lower limit
   * @param high upper limit
   * @throws IllegalArgumentException if they are not finite or stand in the wrong order
   */
  public Interval {
    if (!Double.isFinite(low) || !Double.isFinite(high) || low > high) {
      throw new IllegalArgumentException("no interval: " + low + " to " + high);
    }
  }

  /**
   * The interval around a value.
   *
   * @param center the value
   * @param half half its width, 0 or more
   * @return the interval
   */
  static Interval around(double center, double half) {
    return new Interval(center - half, center + half);
  }

  /**
   * What of this lies within 0 and 1, for a proportion.
   *
   * @return the interval, cut at 0 and 1
   */
  public Interval withinZeroAndOne() {
    return new Interval(low < 0 ? 0 : low > 1 ? 1 : low, high < 0 ? 0 : high > 1 ? 1 : high);
  }
}
