package org.tallywall.experiments.chances.words;

import java.math.BigDecimal;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Rounding;

/** Chances and small numbers as people say them. */
final class Percent {
  /** Up to here people rather say once in how many times. */
  private static final double RARE = 0.05;

  private static final double SHOWN_LEAST = 0.00005;
  private static final double ONE_PERCENT = 0.01;
  private static final double SHOWN_MOST = 0.9995;

  private Percent() {}

  /** A chance such as "42.7 %"; what is neither impossible nor certain is not called so. */
  static String of(double chance) {
    if (chance <= 0 || chance >= 1) {
      return chance <= 0 ? "0 %" : "100 %";
    } else if (chance < SHOWN_LEAST) {
      return "less than 0.01 %";
    } else if (chance > SHOWN_MOST) {
      return "more than 99.9 %";
    }
    int places = chance < ONE_PERCENT ? 2 : 1;
    return Rounding.nearest(100 * chance, places).toPlainString() + " %";
  }

  /** The same, with once in how many times where that is easier to picture. */
  static String pictured(double chance) {
    return chance > 0 && chance < RARE
        ? of(chance) + " (about once in " + CellText.grouped(times(chance)) + ")"
        : of(chance);
  }

  private static String times(double chance) {
    return Rounding.nearest(1 / chance, 0).toPlainString();
  }

  /** An average such as "0.68" or "2". */
  static String average(double number) {
    BigDecimal rounded = Rounding.nearest(number, 2);
    return (rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros()).toPlainString();
  }
}
