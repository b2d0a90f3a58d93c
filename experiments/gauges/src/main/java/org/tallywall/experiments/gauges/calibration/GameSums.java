package org.tallywall.experiments.gauges.calibration;

import java.math.BigInteger;
import org.tallywall.experiments.stats.PairMoments;

/**
 * Two whole numbers added up game by game, for the ratio of their sums. The decisions of one game
 * hang together, so the game is the unit of the interval.
 */
final class GameSums {
  private long above;
  private long below;
  private long games;
  private long met;
  private BigInteger x = BigInteger.ZERO;
  private BigInteger y = BigInteger.ZERO;
  private BigInteger xx = BigInteger.ZERO;
  private BigInteger xy = BigInteger.ZERO;
  private BigInteger yy = BigInteger.ZERO;

  /** Adds to the game that is played. */
  void add(long toAbove, long toBelow) {
    above += toAbove;
    below += toBelow;
  }

  /** The game is over. */
  void endGame() {
    games++;
    if (above != 0 || below != 0) {
      met++;
      BigInteger one = BigInteger.valueOf(above);
      BigInteger other = BigInteger.valueOf(below);
      x = x.add(one);
      y = y.add(other);
      xx = xx.add(one.multiply(one));
      xy = xy.add(one.multiply(other));
      yy = yy.add(other.multiply(other));
      above = 0;
      below = 0;
    }
  }

  /** How many games added anything. */
  long met() {
    return met;
  }

  /** What all games ended so far add up to. */
  PairMoments moments() {
    return new PairMoments(games, x, y, xx, xy, yy);
  }
}
