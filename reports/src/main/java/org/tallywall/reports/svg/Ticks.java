package org.tallywall.reports.svg;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Round numbers along an axis, a step of 1, 2 or 5 times a power of ten apart. Exact decimals, so
 * that 0.3 is written as 0.3.
 *
 * @param step from one to the next
 * @param values from the lowest to the highest; all numbers shown lie between these two
 */
record Ticks(BigDecimal step, List<BigDecimal> values) {
  private static final int[] STEPS = {1, 2, 5, 10};
  private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_EVEN);

  /**
   * Finds the ticks of a range.
   *
   * @param low the lowest number shown
   * @param high the highest; equal numbers get room at both sides
   * @param wished the most steps; fewer than two are taken as two
   */
  static Ticks of(double low, double high, int wished) {
    // Around zero one step is never enough.
    int most = Math.max(2, wished);
    BigDecimal from = decimal(low);
    BigDecimal to = decimal(high);
    if (from.compareTo(to) == 0) {
      BigDecimal room = from.signum() == 0 ? BigDecimal.ONE : from.abs().movePointLeft(1);
      from = from.subtract(room);
      to = to.add(room);
    }
    BigDecimal step = step(to.subtract(from), most);
    while (count(from, to, step) > most) {
      step = step(step.multiply(BigDecimal.valueOf(most)).multiply(new BigDecimal("1.01")), most);
    }
    List<BigDecimal> values = new ArrayList<>();
    BigDecimal value = floor(from, step);
    values.add(value);
    while (value.compareTo(to) < 0) {
      value = value.add(step);
      values.add(value);
    }
    return new Ticks(step, List.copyOf(values));
  }

  double low() {
    return values.get(0).doubleValue();
  }

  double high() {
    return values.get(values.size() - 1).doubleValue();
  }

  /** The smallest round step that needs no more than so many. */
  private static BigDecimal step(BigDecimal range, int most) {
    BigDecimal least = range.divide(BigDecimal.valueOf(most), DIGITS);
    int power = least.precision() - least.scale() - 1;
    for (int lead : STEPS) {
      BigDecimal step = BigDecimal.valueOf(lead).scaleByPowerOfTen(power);
      if (step.compareTo(least) >= 0) {
        return step.setScale(
            Math.max(0, step.stripTrailingZeros().scale()), RoundingMode.UNNECESSARY);
      }
    }
    throw new AssertionError("ten times the leading power is never too small");
  }

  private static int count(BigDecimal from, BigDecimal to, BigDecimal step) {
    BigDecimal above = to.divide(step, 0, RoundingMode.CEILING);
    return above.subtract(from.divide(step, 0, RoundingMode.FLOOR)).intValueExact();
  }

  private static BigDecimal floor(BigDecimal value, BigDecimal step) {
    return value.divide(step, 0, RoundingMode.FLOOR).multiply(step);
  }

  private static BigDecimal decimal(double value) {
    return new BigDecimal(value).round(DIGITS);
  }
}
