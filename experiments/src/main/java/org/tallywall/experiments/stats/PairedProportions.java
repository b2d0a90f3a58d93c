package org.tallywall.experiments.stats;

import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.util.FastMath;

/**
 * Two ways of playing on the same deals, each won or not. Only the deals in which one of them won
 * alone tell anything about the difference.
 *
 * @param both deals that both won
 * @param onlyFirst deals that only the first won
 * @param onlySecond deals that only the second won
 * @param neither deals that neither won
 */
public record PairedProportions(long both, long onlyFirst, long onlySecond, long neither) {
  /**
   * Checks the counts.
   *
   * @param both deals that both won
   * @param onlyFirst deals that only the first won
   * @param onlySecond deals that only the second won
   * @param neither deals that neither won
   * @throws IllegalArgumentException if a count is negative or there are no deals
   */
  public PairedProportions {
    boolean negative = both < 0 || onlyFirst < 0 || onlySecond < 0 || neither < 0;
    if (negative || both + onlyFirst + onlySecond + neither < 1) {
      throw new IllegalArgumentException("four counts of deals, one of them above 0, are needed");
    }
  }

  /**
   * The number of deals.
   *
   * @return 1 or more
   */
  public long deals() {
    return both + onlyFirst + onlySecond + neither;
  }

  /**
   * The difference of the two shares.
   *
   * @return first less second, −1 to 1
   */
  public double difference() {
    return (double) (onlyFirst - onlySecond) / deals();
  }

  /**
   * The exact conditional test (McNemar, Psychometrika 12, 1947, 153–157).
   *
   * @return the two-sided p-value
   */
  public double exactTest() {
    return Math.min(1, 2 * lowerTail());
  }

  /**
   * The mid-p test, which keeps its level and is more powerful (Fagerland, Lydersen and Laake, BMC
   * Medical Research Methodology 13:91, 2013).
   *
   * @return the two-sided p-value; 0 where it is too small to be told from that
   */
  public double midPTest() {
    if (discordant() == 0) {
      return 1;
    }
    double point = binomial().probability((int) onlyFirst);
    return onlyFirst == onlySecond ? 1 - point / 2 : Math.max(0, exactTest() - point);
  }

  private long discordant() {
    return onlyFirst + onlySecond;
  }

  private BinomialDistribution binomial() {
    return new BinomialDistribution(null, Math.toIntExact(discordant()), 0.5);
  }

  private double lowerTail() {
    return discordant() == 0
        ? 1
        : binomial().cumulativeProbability((int) Math.min(onlyFirst, onlySecond));
  }

  /**
   * Newcombe's interval of the difference, square and add with correlation (Statistics in Medicine
   * 17, 1998, 2635–2650, method 10).
   *
   * @param confidence the level, between 0 and 1
   * @return limits within −1 and 1
   */
  public Interval newcombe(double confidence) {
    Proportion first = new Proportion(both + onlyFirst, deals());
    Proportion second = new Proportion(both + onlySecond, deals());
    Interval w1 = first.wilson(confidence);
    Interval w2 = second.wilson(confidence);
    double phi = correlation();
    double below1 = first.share() - w1.low();
    double above1 = w1.high() - first.share();
    double below2 = second.share() - w2.low();
    double above2 = w2.high() - second.share();
    return new Interval(
        difference() - addSquares(below1, above2, phi),
        difference() + addSquares(below2, above1, phi));
  }

  private static double addSquares(double a, double b, double phi) {
    return Math.sqrt(Math.max(0, a * a - 2 * phi * a * b + b * b));
  }

  private double correlation() {
    double margins =
        (double) (both + onlyFirst)
            * (onlySecond + neither)
            * (both + onlySecond)
            * (onlyFirst + neither);
    if (margins == 0) {
      return 0;
    }
    double cross = (double) both * neither - (double) onlyFirst * onlySecond;
    double half = deals() / 2.0;
    double corrected = cross > half ? cross - half : cross >= 0 ? 0 : cross;
    return corrected / FastMath.sqrt(margins);
  }
}
