package org.tallywall.reports.table;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The one place where a double becomes text in full: 17 significant digits, trailing zeros off, no
 * exponent. Seventeen digits lead back to the same double (IEEE 754-2019, 5.12.2), and the text is
 * the same on every Java version, which {@code Double.toString} does not promise.
 */
public final class NumberText {
  private static final MathContext DIGITS = new MathContext(17, RoundingMode.HALF_EVEN);

  private NumberText() {}

  /**
   * Writes a number in full.
   *
   * @param value a finite number
   * @return its digits, such as {@code -0.25}; {@code 0} for both zeros
   * @throws IllegalArgumentException if the number is infinite or not a number
   */
  public static String of(double value) {
    requireFinite(value);
    return plain(new BigDecimal(value).round(DIGITS).stripTrailingZeros());
  }

  /**
   * Digits without exponent and, unlike {@code toPlainString} on a scaled zero, just "0" for zero.
   */
  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.toPlainString();
  }

  static void requireFinite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "a table holds finite numbers, or an empty cell where there is no value; got "
              + (Double.isNaN(value) ? "the result of an undefined operation" : "an infinite one"));
    }
  }
}
