package org.tallywall.strategies.hand;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/** Exact counting for tests: whole numbers throughout, one division at the end. */
final class Ways {
  private Ways() {}

  /** The number of ways to choose some of all; 0 where there are none. */
  static BigInteger choose(int all, int some) {
    if (some < 0 || some > all) {
      return BigInteger.ZERO;
    }
    BigInteger ways = BigInteger.ONE;
    for (int at = 1; at <= some; at++) {
      ways = ways.multiply(BigInteger.valueOf(all - some + at)).divide(BigInteger.valueOf(at));
    }
    return ways;
  }

  /** A fraction. */
  static double share(BigInteger part, BigInteger whole) {
    return new BigDecimal(part).divide(new BigDecimal(whole), MathContext.DECIMAL128).doubleValue();
  }

  /** The chance of at least so many marked tiles among those drawn, without putting back. */
  static double atLeast(int needed, int marked, int drawn, int all) {
    BigInteger good = BigInteger.ZERO;
    for (int found = needed; found <= marked; found++) {
      good = good.add(choose(marked, found).multiply(choose(all - marked, drawn - found)));
    }
    return share(good, choose(all, drawn));
  }

  /** The chance that none of the marked tiles is among those drawn: C(all−m, d) / C(all, d). */
  static double none(int marked, int drawn, int all) {
    return share(choose(all - marked, drawn), choose(all, drawn));
  }
}
