package org.tallywall.experiments.study;

import java.util.Optional;

/**
 * When a study that looks at its results while it runs may stop.
 *
 * @param rule how it looks
 * @param goal what must be reached, by the rule {@link Rule#ALWAYS_VALID}
 * @param halfWidth half the width of the range to be reached, in the primary measure's unit; 0
 *     where the goal is another
 * @param atMost most deals, 1 or more
 * @param expected what is expected of a deal: the standard deviation of the difference for points,
 *     the share of deals in which there is a difference else; empty where the first block tells
 * @param test the two hypotheses, by the rule {@link Rule#SPRT}
 */
public record Until(
    Rule rule,
    Goal goal,
    double halfWidth,
    long atMost,
    Optional<Double> expected,
    Optional<Test> test) {
  /** How a run looks at its results. */
  public enum Rule {
    /** A range that holds at every look at once. */
    ALWAYS_VALID("always-valid"),
    /** Wald's sequential probability ratio test. */
    SPRT("sprt");

    private final String text;

    Rule(String text) {
      this.text = text;
    }

    /**
     * The name in studies.
     *
     * @return as in {@code always-valid}
     */
    public String text() {
      return text;
    }
  }

  /** What must be reached. */
  public enum Goal {
    /** A range no wider than asked for. */
    HALF_WIDTH,
    /** A range that does not hold zero. */
    CLEAR
  }

  /**
   * What a sequential test decides between.
   *
   * @param difference the difference worth finding, as a share of the studied player's games: 0.01
   *     is 1 game in 100, whether it takes one seat of a deal or all four
   * @param falseAlarm chance to find one that is not there
   * @param miss chance to miss one that is there
   */
  public record Test(double difference, double falseAlarm, double miss) {}
}
