package org.tallywall.experiments.stats;

import java.util.Arrays;
import org.apache.commons.math3.distribution.BinomialDistribution;

/**
 * The median of whole numbers that were counted, with the interval between two order statistics
 * that holds it whatever the distribution (Conover, Practical Nonparametric Statistics, 3rd
 * edition, 1999, section 3.2; from memory). Counts are taken from the largest number down: the
 * median is the largest number at which half of all are reached.
 */
public final class Quantile {
  private static final int MOST = Integer.MAX_VALUE;

  private final long[] counts;
  private final long total;
  private final double confidence;

  /**
   * Counts of whole numbers.
   *
   * @param counts how often each number from 0 on came, at least one in all
   * @param confidence the level, between 0 and 1
   * @throws IllegalArgumentException if nothing was counted, or more than 2,147,483,647
   */
  public Quantile(long[] counts, double confidence) {
    this.counts = counts.clone();
    this.total = Arrays.stream(counts).sum();
    this.confidence = confidence;
    if (total < 1 || total > MOST) {
      throw new IllegalArgumentException("no median of " + total + " numbers");
    }
  }

  /**
   * The median.
   *
   * @return the largest number such that at least half of all are as large; the level of its
   *     interval is at least the one asked for, or the interval is the whole range
   */
  public Estimate median() {
    double tail = (1 - confidence) / 2;
    BinomialDistribution below = new BinomialDistribution(null, (int) total, 0.5);
    int rank = below.inverseCumulativeProbability(tail);
    while (rank > 0 && below.cumulativeProbability(rank - 1) > tail) {
      rank--;
    }
    long first = Math.max(1, rank);
    return Estimate.of(
        fromTop((total + 1) / 2),
        new Interval(fromTop(total + 1 - first), fromTop(first)),
        Method.ORDER_STATISTICS);
  }

  /** The number with a rank, 1 for the largest. */
  private int fromTop(long rank) {
    long seen = 0;
    int at = counts.length;
    while (seen < rank) {
      at--;
      seen += counts[at];
    }
    return at;
  }
}
