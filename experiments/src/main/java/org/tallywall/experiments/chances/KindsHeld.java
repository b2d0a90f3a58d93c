package org.tallywall.experiments.chances;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Arrays;
import org.apache.commons.math3.util.CombinatoricsUtils;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * Of how many of the 34 plain kinds a number of tiles out of the whole set holds some copies or
 * more: with two, how many pairs a deal has, three or four alike counted as a pair. Flowers and
 * jokers count as none.
 *
 * <p>Counted exactly, as whole numbers of ways: a kind of which j tiles are held can be held in
 * C(4, j) ways, so the ways of all kinds are the coefficients of a product of 34 polynomials, with
 * those counts that matter marked by a second variable (generating functions; Graham, Knuth and
 * Patashnik, Concrete Mathematics, chapter 7, from memory).
 */
public final class KindsHeld implements Counted {
  private static final int COPIES = 4;
  private static final MathContext DIGITS = new MathContext(40);

  /** At each number of kinds, in how many ways it is that number or a larger one. */
  private final BigInteger[] atLeast;

  private final BigInteger all;
  private final int most;
  private final double average;

  /**
   * Counts the ways.
   *
   * @param set the tiles on the table
   * @param tiles how many of them are held, 0 to {@code set.size()}
   * @param alike from how many copies on a kind counts, 1 to 4
   * @throws IllegalArgumentException if a number lies outside its range
   */
  public KindsHeld(TileSet set, int tiles, int alike) {
    if (tiles < 0 || tiles > set.size() || alike < 1 || alike > COPIES) {
      throw new IllegalArgumentException(
          tiles + " tiles and " + alike + " alike are not in the set of " + set.size());
    }
    BigInteger[][] ways = ways(tiles, alike);
    int others = set.flowers() + set.jokers();
    BigInteger[] exactly = new BigInteger[ways.length];
    for (int kinds = 0; kinds < ways.length; kinds++) {
      exactly[kinds] = BigInteger.ZERO;
      for (int other = 0; other <= Math.min(others, tiles); other++) {
        BigInteger with = BigInteger.valueOf(CombinatoricsUtils.binomialCoefficient(others, other));
        exactly[kinds] = exactly[kinds].add(ways[kinds][tiles - other].multiply(with));
      }
    }
    BigInteger sum = BigInteger.ZERO;
    BigInteger weighed = BigInteger.ZERO;
    int highest = 0;
    atLeast = new BigInteger[exactly.length];
    for (int kinds = exactly.length - 1; kinds >= 0; kinds--) {
      highest = sum.signum() == 0 && exactly[kinds].signum() > 0 ? kinds : highest;
      sum = sum.add(exactly[kinds]);
      weighed = weighed.add(exactly[kinds].multiply(BigInteger.valueOf(kinds)));
      atLeast[kinds] = sum;
    }
    all = sum;
    most = highest;
    average = ratio(weighed, all);
  }

  /** By kinds that count and tiles held, flowers and jokers apart. */
  private static BigInteger[][] ways(int tiles, int alike) {
    BigInteger[][] ways = new BigInteger[kinds(tiles, alike) + 1][tiles + 1];
    Arrays.stream(ways).forEach(row -> Arrays.fill(row, BigInteger.ZERO));
    ways[0][0] = BigInteger.ONE;
    for (int kind = 0; kind < Tile.FLOWER; kind++) {
      for (int kinds = ways.length - 1; kinds >= 0; kinds--) {
        for (int held = tiles; held >= 0; held--) {
          ways[kinds][held] = withOneMore(ways, kinds, held, alike);
        }
      }
    }
    return ways;
  }

  /** The same after one more kind: what stands below and left of a place is still without it. */
  private static BigInteger withOneMore(BigInteger[][] ways, int kinds, int held, int alike) {
    BigInteger sum = BigInteger.ZERO;
    for (int copies = 0; copies <= Math.min(COPIES, held); copies++) {
      int before = kinds - (copies >= alike ? 1 : 0);
      if (before >= 0) {
        long how = CombinatoricsUtils.binomialCoefficient(COPIES, copies);
        sum = sum.add(ways[before][held - copies].multiply(BigInteger.valueOf(how)));
      }
    }
    return sum;
  }

  private static int kinds(int tiles, int alike) {
    return Math.min(Tile.FLOWER, tiles / alike);
  }

  @Override
  public int least() {
    int least = 0;
    while (least < most && atLeast[least + 1].equals(all)) {
      least++;
    }
    return least;
  }

  @Override
  public int most() {
    return most;
  }

  @Override
  public double exactly(int count) {
    return count < 0 || count > most ? 0 : ratio(ways(count).subtract(ways(count + 1)), all);
  }

  @Override
  public double atLeast(int count) {
    return ratio(ways(count), all);
  }

  @Override
  public double average() {
    return average;
  }

  private BigInteger ways(int count) {
    return count <= 0 ? all : count > most ? BigInteger.ZERO : atLeast[count];
  }

  private static double ratio(BigInteger part, BigInteger whole) {
    return new BigDecimal(part).divide(new BigDecimal(whole), DIGITS).doubleValue();
  }
}
