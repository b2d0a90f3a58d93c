package org.tallywall.experiments.chances;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import org.apache.commons.math3.fraction.BigFraction;

/** Exact fractions for tests, from binomial coefficients made by Pascal's rule. */
final class Fractions {
  private static final int MOST = 200;
  private static final MathContext DIGITS = new MathContext(40);

  private final BigInteger[][] choose = new BigInteger[MOST + 1][MOST + 1];

  Fractions() {
    for (int n = 0; n <= MOST; n++) {
      for (int k = 0; k <= MOST; k++) {
        choose[n][k] =
            k == 0
                ? BigInteger.ONE
                : k > n ? BigInteger.ZERO : choose[n - 1][k - 1].add(choose[n - 1][k]);
      }
    }
  }

  BigInteger choose(int n, int k) {
    return k < 0 || k > n ? BigInteger.ZERO : choose[n][k];
  }

  /** The chance of exactly k wanted tiles. */
  BigFraction exactly(int unseen, int wanted, int draws, int k) {
    return new BigFraction(
        choose(wanted, k).multiply(choose(unseen - wanted, draws - k)), choose(unseen, draws));
  }

  /** The chance of at least one wanted tile, by what is left over. */
  BigFraction any(int unseen, int wanted, int draws) {
    return BigFraction.ONE.subtract(
        new BigFraction(choose(unseen - wanted, draws), choose(unseen, draws)));
  }

  static double number(BigFraction fraction) {
    return new BigDecimal(fraction.getNumerator())
        .divide(new BigDecimal(fraction.getDenominator()), DIGITS)
        .doubleValue();
  }
}
