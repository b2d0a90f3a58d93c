package org.tallywall.reports.figure;

import java.math.BigDecimal;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Rounding;

/**
 * A number with its range, in the unit of its axis and in full. The number may lie outside the
 * range, because some ranges (those made of several looks at the data) can leave it out.
 *
 * @param value the number, finite
 * @param low the lower limit, finite, at most {@code high}
 * @param high the upper limit, finite
 */
public record PlotValue(double value, double low, double high) {
  /** Decimal places where the limits are equal and so tell none. */
  private static final int PLACES_WITHOUT_WIDTH = 1;

  /**
   * Takes a number and its limits.
   *
   * @param value the number
   * @param low the lower limit
   * @param high the upper limit
   * @throws IllegalArgumentException if one is not finite, or the limits are in the wrong order
   */
  public PlotValue {
    Demand.finite("an estimate", value);
    Demand.finite("an estimate", low);
    Demand.finite("an estimate", high);
    Demand.that(low <= high, "an estimate", "the lower limit is above the upper limit");
  }

  /**
   * Tells whether the range leaves out 0, so that plus or minus is clear.
   *
   * @return 1 if the whole range is above 0, −1 if it is below, else 0
   */
  public int clearSign() {
    if (low > 0) {
      return 1;
    }
    return high < 0 ? -1 : 0;
  }

  /**
   * The number for people, rounded by {@link Rounding}.
   *
   * @param sign whether a plus is written
   * @return such as {@code +1.2}
   */
  public String valueText(Sign sign) {
    return number(rounded().estimate(), sign);
  }

  /**
   * The range for people, rounded outward by {@link Rounding}.
   *
   * @param sign whether a plus is written
   * @return such as {@code +0.4 to +2.0}
   */
  public String rangeText(Sign sign) {
    Rounding.Rounded shown = rounded();
    return number(shown.low(), sign) + " to " + number(shown.high(), sign);
  }

  /**
   * Number and range for people.
   *
   * @param sign whether a plus is written
   * @return such as {@code +1.2 (+0.4 to +2.0)}
   */
  public String text(Sign sign) {
    return valueText(sign) + " (" + rangeText(sign) + ")";
  }

  /**
   * A rounded number as figures show it: thousands apart, a real minus sign.
   *
   * @param rounded the number, rounded already
   * @param sign whether a plus is written
   * @return such as {@code −1,234.5}
   */
  public static String number(BigDecimal rounded, Sign sign) {
    String plain = CellText.grouped(rounded.toPlainString());
    boolean plus = sign == Sign.PLUS_AND_MINUS && rounded.signum() > 0;
    return plus ? "+" + plain : plain.replace('-', '\u2212');
  }

  private Rounding.Rounded rounded() {
    return Rounding.interval(value, low, high, PLACES_WITHOUT_WIDTH);
  }
}
