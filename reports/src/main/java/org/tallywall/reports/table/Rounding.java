package org.tallywall.reports.table;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How a number is rounded for people. The uncertainty tells the places: the last place shown is
 * that of the second significant digit of the interval's half-width. The estimate goes to the
 * nearest value there (a half goes up, away from zero), the limits go outward, so that the interval
 * shown covers the one computed. Where that would make 0 of a limit that is not 0, all three get as
 * many more digits as it takes: a range that leaves out 0 has to be seen to leave it out.
 *
 * <p>Two digits of uncertainty, and an estimate to the same place, are what the Guide to the
 * expression of uncertainty in measurement (JCGM 100:2008, 7.2.6) asks for; limits outward are our
 * addition.
 *
 * <p>Every number is first taken to the 15 significant digits that any double carries faithfully.
 * Otherwise the binary tail of a limit of 0.3 (0.29999999999999998…) would push it outward to 0.29.
 */
public final class Rounding {
  private static final MathContext FAITHFUL = new MathContext(15, RoundingMode.HALF_EVEN);
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  /** A limit no further from 0 than this part of the width is 0 but for the error of doubles. */
  private static final BigDecimal NOTHING = BigDecimal.valueOf(1, 9);

  private Rounding() {}

  /**
   * An estimate and its limits, all with the same decimal places.
   *
   * @param estimate the estimate, to the nearest value
   * @param low the lower limit, rounded down
   * @param high the upper limit, rounded up
   */
  public record Rounded(BigDecimal estimate, BigDecimal low, BigDecimal high) {}

  /**
   * Finds the place of the second significant digit.
   *
   * @param halfWidth an uncertainty, finite and above 0
   * @return its decimal places; negative for places before the point (−1: tens)
   * @throws IllegalArgumentException if the uncertainty is not finite or not above 0
   */
  public static int places(double halfWidth) {
    if (!(halfWidth > 0)) {
      throw new IllegalArgumentException("an uncertainty is above 0");
    }
    return places(faithful(halfWidth));
  }

  /**
   * Rounds to the nearest value, a half away from zero.
   *
   * @param value a finite number
   * @param places decimal places; negative for places before the point
   * @return the rounded number, its scale equal to {@code places}; zero has no sign
   * @throws IllegalArgumentException if the number is not finite
   */
  public static BigDecimal nearest(double value, int places) {
    return faithful(value).setScale(places, RoundingMode.HALF_UP);
  }

  /**
   * Rounds an estimate and its limits.
   *
   * @param estimate a finite number
   * @param low the lower limit, finite, at most {@code high}
   * @param high the upper limit, finite
   * @param placesWithoutWidth decimal places to use if the limits are equal and so tell none
   * @return the three numbers, rounded
   * @throws IllegalArgumentException if a number is not finite, or the limits are in the wrong
   *     order
   */
  public static Rounded interval(double estimate, double low, double high, int placesWithoutWidth) {
    BigDecimal from = faithful(low);
    BigDecimal to = faithful(high);
    int direction = to.compareTo(from);
    if (direction < 0) {
      throw new IllegalArgumentException("the lower limit is above the upper limit");
    }
    int places = direction == 0 ? placesWithoutWidth : signed(from, to);
    return new Rounded(
        nearest(estimate, places),
        from.setScale(places, RoundingMode.FLOOR),
        to.setScale(places, RoundingMode.CEILING));
  }

  /** The places of the half-width, and more where a limit would lose its sign by going outward. */
  private static int signed(BigDecimal from, BigDecimal to) {
    BigDecimal width = to.subtract(from);
    int places = places(width.divide(TWO));
    BigDecimal near = from.signum() > 0 ? from : to.negate();
    boolean leavesOutZero = near.compareTo(width.multiply(NOTHING)) > 0;
    while (leavesOutZero && near.setScale(places, RoundingMode.FLOOR).signum() == 0) {
      places++;
    }
    return places;
  }

  private static int places(BigDecimal halfWidth) {
    return halfWidth.scale() - halfWidth.precision() + 2;
  }

  private static BigDecimal faithful(double value) {
    NumberText.requireFinite(value);
    return new BigDecimal(value).round(FAITHFUL);
  }
}
