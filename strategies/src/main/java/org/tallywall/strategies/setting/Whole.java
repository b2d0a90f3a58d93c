package org.tallywall.strategies.setting;

import java.math.BigDecimal;

/**
 * A whole number in a range.
 *
 * @param least the smallest
 * @param most the largest
 */
record Whole(int least, int most) implements Kind<Integer> {
  @Override
  public boolean allows(Object written) {
    return written instanceof BigDecimal number
        && number.stripTrailingZeros().scale() <= 0
        && number.compareTo(BigDecimal.valueOf(least)) >= 0
        && number.compareTo(BigDecimal.valueOf(most)) <= 0;
  }

  @Override
  public Integer read(Object written) {
    return ((BigDecimal) written).intValueExact();
  }

  @Override
  public Object write(Integer value) {
    return BigDecimal.valueOf(value);
  }

  @Override
  public String range(Integer usual) {
    return "a whole number from " + least + " to " + most;
  }
}
