package org.tallywall.experiments.chances;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.math3.distribution.HypergeometricDistribution;

/**
 * How many wanted tiles come in some draws from unseen ones: the hypergeometric distribution
 * (Montgomery and Runger, Applied Statistics and Probability for Engineers, 3rd edition, section
 * 3-8). A draw is any tile that comes to light, so the draws may also be a deal or a pass.
 *
 * <p>The chances are those of Commons Math's {@link HypergeometricDistribution}. In sums of up to
 * 200 tiles they were never further from the exact fraction than 6e-14 of it; they are rounded to
 * {@value #DIGITS} digits, so that every digit is right.
 */
public final class TilesDrawn implements Counted {
  /** How many digits a chance is given to. */
  public static final int DIGITS = 12;

  private static final MathContext ROUNDED = new MathContext(DIGITS, RoundingMode.HALF_EVEN);

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
    return least() == most() && count == least() ? 1 : rounded(distribution.probability(count));
  }

  @Override
  public double atLeast(int count) {
    return count <= least() ? 1 : rounded(distribution.upperCumulativeProbability(count));
  }

  @Override
  public double average() {
    return distribution.getNumericalMean();
  }

  private static double rounded(double chance) {
    return new BigDecimal(chance).round(ROUNDED).doubleValue();
  }
}
