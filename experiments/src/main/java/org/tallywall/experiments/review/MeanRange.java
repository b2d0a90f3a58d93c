package org.tallywall.experiments.review;

import org.tallywall.experiments.stats.AlwaysValid;

/**
 * The mean of bounded whole numbers with a range that holds at every look: the empirical-Bernstein
 * band of {@link AlwaysValid}. It needs no number of games to be near enough to normal: where few
 * games, or none, came out otherwise, it allows for those that would have.
 *
 * <p>Every value is guessed beforehand by the mean of the rounds before its own, as any rule made
 * before the round allows.
 */
final class MeanRange {
  /** Games at which the band is tightest; ten times more or fewer makes it a little wider. */
  private static final double TIGHTEST = 2_000;

  /** A usual standard deviation, as a part of the width of all values. */
  private static final double USUAL = 1 / 24.0;

  /** The most that a guess is away from 0, as a part of the bound. */
  private static final double GUESS = 1 / 8.0;

  private final double most;
  private final double scale;
  private long n;
  private long sum;
  private double spread;

  /**
   * A mean of nothing.
   *
   * @param most no value is further from 0
   */
  MeanRange(long most) {
    this.most = most;
    this.scale = most * (1 + GUESS);
  }

  /**
   * Adds a round.
   *
   * @param values how many
   * @param total their sum
   * @param squares the sum of their squares
   */
  void add(long values, long total, long squares) {
    double limit = most * GUESS;
    double guess = n == 0 ? 0 : Math.max(-limit, Math.min(limit, mean()));
    spread += squares - 2 * guess * total + values * guess * guess;
    n += values;
    sum += total;
  }

  long n() {
    return n;
  }

  double mean() {
    return n == 0 ? 0 : (double) sum / n;
  }

  /**
   * Half the width of the range.
   *
   * @param alpha chance to miss the truth ever, both sides together
   */
  double half(double alpha) {
    double usual = 2 * most * USUAL;
    double rho = AlwaysValid.tuning(TIGHTEST * usual * usual, alpha);
    return AlwaysValid.empiricalBernstein(n, spread, rho, alpha, scale);
  }

  Ranged range(double alpha) {
    return n == 0 ? new Ranged(0, -most, most) : Ranged.around(mean(), half(alpha), -most, most);
  }
}
