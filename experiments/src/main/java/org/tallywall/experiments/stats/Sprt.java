package org.tallywall.experiments.stats;

import org.apache.commons.math3.util.FastMath;

/**
 * Wald's sequential test between two chances (Annals of Mathematical Statistics 16, 1945, 117–186).
 * On paired deals it is applied to those that only one way of playing won: deals that tell nothing
 * have likelihood ratio 1.
 *
 * @param chance0 the chance under the first hypothesis, between 0 and 1
 * @param chance1 the chance under the second, between 0 and 1
 * @param alpha chance to decide for the second when the first is true
 * @param beta chance to decide for the first when the second is true
 */
public record Sprt(double chance0, double chance1, double alpha, double beta) {
  /** What the test says so far. */
  public enum Decision {
    /** Neither hypothesis is clear yet. */
    GO_ON,
    /** The first hypothesis. */
    FIRST,
    /** The second hypothesis. */
    SECOND
  }

  /**
   * The test of paired deals: no difference against one worth finding.
   *
   * @param discordance share of deals that only one way of playing wins
   * @param delta difference of the shares worth finding, above 0
   * @param alpha chance of a false finding
   * @param beta chance to miss that difference
   * @return the test on discordant deals
   */
  public static Sprt paired(double discordance, double delta, double alpha, double beta) {
    return new Sprt(0.5, (discordance + delta) / (2 * discordance), alpha, beta);
  }

  /**
   * What a success adds to the logarithm of the likelihood ratio.
   *
   * @return a number, above 0 where the second chance is the larger
   */
  public double stepUp() {
    return FastMath.log(chance1 / chance0);
  }

  /**
   * What a failure adds.
   *
   * @return a number, below 0 where the second chance is the larger
   */
  public double stepDown() {
    return FastMath.log((1 - chance1) / (1 - chance0));
  }

  /**
   * From where on the second hypothesis is accepted.
   *
   * @return a logarithm above 0
   */
  public double upper() {
    return FastMath.log((1 - beta) / alpha);
  }

  /**
   * Down to where the first hypothesis is accepted.
   *
   * @return a logarithm below 0
   */
  public double lower() {
    return FastMath.log(beta / (1 - alpha));
  }

  /**
   * What the counts say.
   *
   * @param successes successes so far
   * @param failures failures so far
   * @return the decision
   */
  public Decision decide(long successes, long failures) {
    double ratio = successes * stepUp() + failures * stepDown();
    return ratio >= upper() ? Decision.SECOND : ratio <= lower() ? Decision.FIRST : Decision.GO_ON;
  }
}
