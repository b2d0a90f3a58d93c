package org.tallywall.experiments.review;

/**
 * A number counted in games, with a range around it.
 *
 * @param value the number as counted
 * @param low lower end of the range, not above the value
 * @param high upper end of the range, not below the value
 */
public record Ranged(double value, double low, double high) {
  /** Nothing at all, for certain. */
  public static final Ranged ZERO = new Ranged(0, 0, 0);

  /**
   * Checks the order.
   *
   * @param value the number
   * @param low lower end
   * @param high upper end
   * @throws IllegalArgumentException if the value lies outside, or something is no number
   */
  public Ranged {
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException("no range: " + low + ", " + value + ", " + high);
    }
  }

  /**
   * A number with a range that is cut where nothing can lie.
   *
   * @param value the number
   * @param half half the width of the range
   * @param least the least that there can be
   * @param most the most that there can be
   * @return both
   */
  static Ranged around(double value, double half, double least, double most) {
    return new Ranged(value, Math.max(least, value - half), Math.min(most, value + half));
  }

  /**
   * Half the width.
   *
   * @return 0 or more
   */
  public double half() {
    return (high - low) / 2;
  }

  /**
   * The same with the other sign.
   *
   * @return the number and its range
   */
  Ranged negated() {
    return new Ranged(0 - value, 0 - high, 0 - low);
  }
}
