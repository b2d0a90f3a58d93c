package org.tallywall.strategies.setting;

import java.math.BigDecimal;

/**
 * A number in a range, fractions allowed.
 *
 * @param least the smallest
 * @param most the largest
 */
record Decimal(double least, double most) implements Kind<Double> {
  @Override
  public boolean allows(Object written) {
    return written instanceof BigDecimal number
        && number.compareTo(BigDecimal.valueOf(least)) >= 0
        && number.compareTo(BigDecimal.valueOf(most)) <= 0;
  }

  @Override
  public Double read(Object written) {
    return ((BigDecimal) written).doubleValue();
  }

  @Override
  public Object write(Double value) {
    return Setting.plain(BigDecimal.valueOf(value));
  }

  @Override
  public String range(Double usual) {
    return "a number from " + text(least) + " to " + text(most);
  }

  private static String text(double bound) {
    return BigDecimal.valueOf(bound).toPlainString();
  }
}
