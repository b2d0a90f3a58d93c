package org.tallywall.experiments.stats;

import org.apache.commons.math3.special.Erf;
import org.apache.commons.math3.util.FastMath;

/**
 * What makes a range hold at every look at a run at once, for a run of which nobody fixed in
 * advance where it would be looked at or stopped. The range of a mean is then that of the
 * asymptotic confidence sequence (Waudby-Smith, Arbour, Sinha, Kennedy and Ramdas, Annals of
 * Statistics 2024): as many standard errors wide as the normal mixture's bound says, which is more
 * than for a number fixed in advance. So any range made of standard errors holds at every look if
 * it is taken at the level that belongs to so many of them, and any p-value does if it is carried
 * over by the same mixture. Where the range is tightest is fixed for all runs, so it cannot be
 * chosen after looking.
 *
 * @param deals deals at the look, {@link #LEAST} or more
 * @param confidence the level at which all looks together hold, between 0 and 1
 */
public record EveryLook(long deals, double confidence) {
  /** With fewer deals a mean is not yet near enough to normal for it. */
  public static final long LEAST = 1_000;

  /** Deals at which the range is tightest; ten times more or fewer makes it a tenth wider. */
  private static final double TIGHTEST = 5_000;

  /** Smaller chances cannot be told from nothing where a level is near 1. */
  private static final double SMALLEST = 1e-13;

  /**
   * Checks the number of deals.
   *
   * @param deals deals at the look
   * @param confidence the level at which all looks together hold
   * @throws IllegalArgumentException if there are too few deals
   */
  public EveryLook {
    if (deals < LEAST) {
      throw new IllegalArgumentException("a look takes " + LEAST + " deals, not " + deals);
    }
  }

  /**
   * Half the width of the range.
   *
   * @return in standard errors
   */
  public double reach() {
    return AlwaysValid.normalMixture(deals, rho(), 1 - confidence) / Math.sqrt(deals);
  }

  private double rho() {
    return AlwaysValid.tuning(TIGHTEST, 1 - confidence);
  }

  /**
   * The level at which a range of a fixed number of deals is to be taken.
   *
   * @return above the level asked for; 1 where no number below it is near enough
   */
  public double level() {
    double outside = Erf.erfc(reach() / FastMath.sqrt(2));
    return outside < SMALLEST ? 1 : 1 - outside;
  }

  /**
   * A p-value that holds at every look.
   *
   * @param p the two-sided p-value of a fixed number of deals
   * @return the chance that a run without a difference ever comes to as much; at most 1 less the
   *     level asked for exactly where the range leaves out 0
   */
  public double chance(double p) {
    double z = Normal.quantile(1 - Math.max(p, SMALLEST) / 2);
    double weight = deals / rho();
    double evidence = z * z * weight / (1 + weight) / 2 - FastMath.log(1 + weight) / 2;
    return Math.min(1, FastMath.exp(-evidence));
  }
}
