package org.tallywall.experiments.stats;

/**
 * Deals that came out one more or one fewer, where either kind is so rare (or so common) that a
 * normal curve does not fit. Each share takes its exact limits (Clopper and Pearson, Biometrika 26,
 * 1934, 404–413), and the limits of the difference are put together from them by square-and-add,
 * with the correlation that two shares of the same deals have (Newcombe, Statistics in Medicine 17,
 * 1998, 873–890; Zou and Donner, Statistics in Medicine 27, 2008, 1693–1702; all from memory).
 * Where nothing differed the limits are those of the rule of three, one for each side.
 *
 * @param more deals that came out more
 * @param fewer deals that came out fewer
 * @param deals all deals, those without a difference included
 */
public record RareDifference(long more, long fewer, long deals) {
  /**
   * Checks the counts.
   *
   * @param more deals that came out more
   * @param fewer deals that came out fewer
   * @param deals all deals
   * @throws IllegalArgumentException if they do not fit together
   */
  public RareDifference {
    if (more < 0 || fewer < 0 || deals < 1 || more + fewer > deals) {
      throw new IllegalArgumentException(
          "no counts of deals: " + more + " and " + fewer + " of " + deals);
    }
  }

  /**
   * The difference of the two shares.
   *
   * @return −1 to 1
   */
  public double share() {
    return (double) (more - fewer) / deals;
  }

  /**
   * The limits of the difference of the two shares.
   *
   * @param confidence the level, between 0 and 1
   * @return an interval within −1 and 1, never without width
   */
  public Interval interval(double confidence) {
    Proportion up = new Proportion(more, deals);
    Proportion down = new Proportion(fewer, deals);
    Interval ups = up.clopperPearson(confidence);
    Interval downs = down.clopperPearson(confidence);
    double low = root(up.share() - ups.low(), downs.high() - down.share());
    double high = root(ups.high() - up.share(), down.share() - downs.low());
    return new Interval(Math.max(-1, share() - low), Math.min(1, share() + high));
  }

  private double root(double one, double other) {
    return Math.sqrt(one * one - 2 * correlation() * one * other + other * other);
  }

  /** Of the two shares: below 0, because a deal cannot come out both ways. */
  private double correlation() {
    double rest = (double) (deals - more) * (deals - fewer);
    return more == 0 || fewer == 0 ? 0 : -Math.sqrt((double) more * fewer / rest);
  }

  /**
   * The exact test of more against fewer, both being as likely where nothing is behind it: the sign
   * test.
   *
   * @return the two-sided p-value; 1 where nothing differed
   */
  public double p() {
    return new PairedProportions(0, more, fewer, deals - more - fewer).exactTest();
  }
}
