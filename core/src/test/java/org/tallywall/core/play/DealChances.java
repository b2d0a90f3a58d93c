package org.tallywall.core.play;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.function.IntPredicate;
import org.tallywall.core.random.Exact;

/** Exact chances of a deal, for tests: binomial coefficients and generating functions. */
final class DealChances {
  private static final int TILES = 152;
  private static final int KINDS = 34;

  private DealChances() {}

  /** The expected number of the 34 plain kinds of which a hand holds so many at least. */
  static double kinds(int tiles, int least) {
    return KINDS * Exact.ratio(atLeast(tiles, least), Exact.choose(TILES, tiles));
  }

  private static BigInteger atLeast(int tiles, int least) {
    BigInteger ways = BigInteger.ZERO;
    for (int copies = least; copies <= 4; copies++) {
      ways = ways.add(Exact.choose(4, copies).multiply(Exact.choose(148, tiles - copies)));
    }
    return ways;
  }

  /** The variance of that number, from the chances of one kind and of two. */
  static double varianceOfKinds(int tiles, int least) {
    BigInteger both = BigInteger.ZERO;
    for (int one = least; one <= 4; one++) {
      for (int two = least; two <= 4; two++) {
        BigInteger ways = Exact.choose(4, one).multiply(Exact.choose(4, two));
        both = both.add(ways.multiply(Exact.choose(144, tiles - one - two)));
      }
    }
    double single = Exact.ratio(atLeast(tiles, least), Exact.choose(TILES, tiles));
    double pair = Exact.ratio(both, Exact.choose(TILES, tiles));
    return KINDS * single * (1 - single) + KINDS * (KINDS - 1) * (pair - single * single);
  }

  /**
   * The chances that a hand holds 0, 1, 2, … kinds in such numbers: for every kind the polynomial
   * of its copies, multiplied out, numbers that count kept apart.
   */
  static double[] kindsHeld(int tiles, IntPredicate counts, boolean flowers) {
    BigInteger[][] ways = new BigInteger[tiles + 1][tiles + 1];
    Arrays.stream(ways).forEach(row -> Arrays.fill(row, BigInteger.ZERO));
    ways[0][0] = BigInteger.ONE;
    for (int kind = 0; kind < KINDS; kind++) {
      ways = times(ways, 4, counts);
    }
    ways = times(ways, 8, flowers ? counts : copies -> false);
    ways = times(ways, 8, copies -> false);
    double[] chances = new double[tiles + 1];
    for (int kinds = 0; kinds <= tiles; kinds++) {
      chances[kinds] = Exact.ratio(ways[kinds][tiles], Exact.choose(TILES, tiles));
    }
    return chances;
  }

  private static BigInteger[][] times(BigInteger[][] ways, int copies, IntPredicate counts) {
    int most = ways.length;
    BigInteger[][] product = new BigInteger[most][most];
    Arrays.stream(product).forEach(row -> Arrays.fill(row, BigInteger.ZERO));
    for (int kinds = 0; kinds < most; kinds++) {
      for (int tiles = 0; tiles < most; tiles++) {
        for (int held = 0; held <= copies && tiles + held < most; held++) {
          int more = counts.test(held) ? 1 : 0;
          if (ways[kinds][tiles].signum() > 0 && kinds + more < most) {
            BigInteger add = ways[kinds][tiles].multiply(Exact.choose(copies, held));
            product[kinds + more][tiles + held] = product[kinds + more][tiles + held].add(add);
          }
        }
      }
    }
    return product;
  }

  /**
   * The chance that each of the four hands holds a joker: inclusion and exclusion of empty ones.
   */
  static double everySeatHasAJoker() {
    int[] hand = {14, 13, 13, 13};
    BigInteger ways = BigInteger.ZERO;
    for (int empty = 0; empty < 16; empty++) {
      int barred = 0;
      for (int seat = 0; seat < 4; seat++) {
        barred += (empty >> seat & 1) != 0 ? hand[seat] : 0;
      }
      BigInteger places = Exact.choose(TILES - barred, 8);
      ways = Integer.bitCount(empty) % 2 == 0 ? ways.add(places) : ways.subtract(places);
    }
    return Exact.ratio(ways, Exact.choose(TILES, 8));
  }

  /** The chance that two hands of 13 hold these numbers of jokers. */
  static double jokersOfTwoHands(int one, int two) {
    BigInteger ways =
        Exact.choose(8, one)
            .multiply(Exact.choose(144, 13 - one))
            .multiply(Exact.choose(8 - one, two))
            .multiply(Exact.choose(131 + one, 13 - two));
    return Exact.ratio(ways, Exact.choose(TILES, 13).multiply(Exact.choose(139, 13)));
  }

  /** The chance that the first of some outs among unseen tiles comes at a certain tile. */
  static double firstOutAt(int unseen, int outs, int wait) {
    return Exact.ratio(Exact.choose(unseen - wait, outs - 1), Exact.choose(unseen, outs));
  }
}
