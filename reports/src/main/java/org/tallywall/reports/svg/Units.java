package org.tallywall.reports.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The one place where a length becomes text in a picture: two decimals, trailing zeros off. */
final class Units {
  private static final int PLACES = 2;

  private Units() {}

  static String of(double length) {
    BigDecimal rounded = new BigDecimal(length).setScale(PLACES, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
