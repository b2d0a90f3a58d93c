package org.tallywall.core.random;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/** Exact counting for tests: whole numbers throughout, one division at the end. */
public final class Exact {
  private Exact() {}

  /** The number of ways to choose {@code k} of {@code n}; 0 where k is no such number. */
  public static BigInteger choose(int n, int k) {
    if (k < 0 || k > n) {
      return BigInteger.ZERO;
    }
    BigInteger ways = BigInteger.ONE;
    for (int at = 1; at <= k; at++) {
      ways = ways.multiply(BigInteger.valueOf(n - k + at)).divide(BigInteger.valueOf(at));
    }
    return ways;
  }

  /** A fraction of whole numbers, to 34 digits and then to a double. */
  public static double ratio(BigInteger part, BigInteger whole) {
    return new BigDecimal(part).divide(new BigDecimal(whole), MathContext.DECIMAL128).doubleValue();
  }

  /** The chance of {@code k} marked tiles among {@code drawn} of {@code all}. */
  public static double hypergeometric(int all, int marked, int drawn, int k) {
    BigInteger ways = choose(marked, k).multiply(choose(all - marked, drawn - k));
    return ratio(ways, choose(all, drawn));
  }

  /** Those chances for 0, 1, 2, ... marked tiles; the last stands for itself and all above. */
  public static double[] hypergeometricUpTo(int last, int all, int marked, int drawn) {
    double[] chances = new double[last + 1];
    BigInteger rest = choose(all, drawn);
    for (int k = 0; k < last; k++) {
      BigInteger ways = choose(marked, k).multiply(choose(all - marked, drawn - k));
      chances[k] = ratio(ways, choose(all, drawn));
      rest = rest.subtract(ways);
    }
    chances[last] = ratio(rest, choose(all, drawn));
    return chances;
  }
}
