package org.tallywall.core.play;

import java.math.BigInteger;
import java.util.Arrays;
import org.tallywall.core.random.Exact;

/**
 * The exact chance that a fixed hand can be made from the tiles seen so far, for tests. Each group
 * is a polynomial in the copies seen, kept apart by how many tiles it lacks; the jokers seen must
 * be enough for all that lack.
 */
final class SolitaireChances {
  private static final int JOKERS = 8;
  private static final int TILES = 152;

  /** Ways by tiles of the hand's kinds seen, and by tiles lacking. */
  private BigInteger[][] ways = {{BigInteger.ONE}};

  private int kinds;

  /** Adds a group of one kind; a group of less than three takes no joker. */
  SolitaireChances group(int size, int copies, boolean jokers) {
    int seen = ways.length + copies;
    int lacking = Math.min(JOKERS + 1, ways[0].length + size);
    BigInteger[][] product = new BigInteger[seen][lacking];
    Arrays.stream(product).forEach(row -> Arrays.fill(row, BigInteger.ZERO));
    for (int before = 0; before < ways.length; before++) {
      for (int lacked = 0; lacked < ways[0].length; lacked++) {
        for (int held = 0; held <= copies; held++) {
          int lack = Math.max(0, size - held);
          boolean allowed = lack == 0 || (jokers && size >= 3);
          if (allowed && lacked + lack < lacking) {
            BigInteger more = ways[before][lacked].multiply(Exact.choose(copies, held));
            product[before + held][lacked + lack] = product[before + held][lacked + lack].add(more);
          }
        }
      }
    }
    ways = product;
    kinds += copies;
    return this;
  }

  /** The chance that the hand is complete when so many tiles were drawn after the first 13. */
  double by(int draws) {
    int seen = 13 + draws;
    int rest = TILES - JOKERS - kinds;
    BigInteger good = BigInteger.ZERO;
    for (int jokers = 0; jokers <= JOKERS; jokers++) {
      for (int useful = 0; useful < ways.length; useful++) {
        for (int lacking = 0; lacking < ways[0].length && lacking <= jokers; lacking++) {
          BigInteger others = Exact.choose(rest, seen - jokers - useful);
          good =
              good.add(
                  ways[useful][lacking].multiply(Exact.choose(JOKERS, jokers)).multiply(others));
        }
      }
    }
    return Exact.ratio(good, Exact.choose(TILES, seen));
  }
}
