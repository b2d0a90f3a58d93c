package org.tallywall.experiments.stats;

import java.util.Arrays;
import org.apache.commons.math3.util.FastMath;

/**
 * Ratings from contests of which only the winner counts: {@code P(i wins) = m_i g_i / sum of m_j
 * g_j}, with m_i the places that i holds. Fitted by Hunter's algorithm (Annals of Statistics 32,
 * 2004, 384–406). The wall is one more contestant with one place in every game. Bradley and Terry's
 * model is the case of two contestants.
 */
public final class TopOneRatings {
  private static final double TOLERANCE = 1e-13;
  private static final int MOST_ROUNDS = 1_000_000;

  private TopOneRatings() {}

  /**
   * Contests of one composition.
   *
   * @param places places that each contestant holds; 0 where it does not take part
   * @param wins how often each won
   */
  public record Contests(int[] places, long[] wins) {
    /**
     * Contests.
     *
     * @param places places that each contestant holds
     * @param wins how often each won
     */
    public Contests {
      places = places.clone();
      wins = wins.clone();
    }

    long games() {
      return Arrays.stream(wins).sum();
    }
  }

  /**
   * The worths that explain the wins best.
   *
   * @param contestants how many there are
   * @param contests what they won against whom
   * @return worths that sum to 1
   * @throws IllegalArgumentException if somebody never won or never lost, so that no fit exists
   */
  public static double[] fit(int contestants, Iterable<Contests> contests) {
    long[] won = new long[contestants];
    for (Contests one : contests) {
      for (int at = 0; at < contestants; at++) {
        won[at] += one.wins()[at];
      }
    }
    for (long wins : won) {
      if (wins == 0) {
        throw new IllegalArgumentException("who never wins has no rating");
      }
    }
    double[] worth = new double[contestants];
    Arrays.fill(worth, 1.0 / contestants);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double[] next = improve(worth, won, contests);
      double change = 0;
      for (int at = 0; at < contestants; at++) {
        change = Math.max(change, Math.abs(FastMath.log(next[at] / worth[at])));
      }
      worth = next;
      if (change < TOLERANCE) {
        return worth;
      }
    }
    throw new IllegalArgumentException("somebody never loses, so no ratings fit");
  }

  private static double[] improve(double[] worth, long[] won, Iterable<Contests> contests) {
    double[] weight = new double[worth.length];
    for (Contests one : contests) {
      double together = 0;
      for (int at = 0; at < worth.length; at++) {
        together += one.places()[at] * worth[at];
      }
      for (int at = 0; at < worth.length; at++) {
        weight[at] += one.games() * one.places()[at] / together;
      }
    }
    double[] next = new double[worth.length];
    double sum = 0;
    for (int at = 0; at < worth.length; at++) {
      next[at] = won[at] / weight[at];
      sum += next[at];
    }
    for (int at = 0; at < worth.length; at++) {
      next[at] /= sum;
    }
    return next;
  }
}
