package org.tallywall.experiments.stats;

/**
 * Two shares from different deals, where deals cannot be shared.
 *
 * @param first one share
 * @param second the other
 */
public record IndependentProportions(Proportion first, Proportion second) {
  /**
   * Newcombe's hybrid score interval of the difference (Statistics in Medicine 17, 1998, 873–890,
   * method 10).
   *
   * @param confidence the level, between 0 and 1
   * @return limits within −1 and 1
   */
  public Interval newcombe(double confidence) {
    Interval w1 = first.wilson(confidence);
    Interval w2 = second.wilson(confidence);
    double difference = first.share() - second.share();
    return new Interval(
        difference - length(first.share() - w1.low(), w2.high() - second.share()),
        difference + length(w1.high() - first.share(), second.share() - w2.low()));
  }

  private static double length(double a, double b) {
    return Math.sqrt(a * a + b * b);
  }
}
