package org.tallywall.experiments.review;

import org.apache.commons.math3.util.FastMath;
import org.tallywall.experiments.stats.AlwaysValid;

/**
 * The mean of whole numbers, one a game, with a range that holds at every look: the asymptotic
 * confidence sequence of {@link AlwaysValid}.
 *
 * <p>That one is for means near enough to normal, and choices often end alike in nearly all games,
 * so that few that differ say little of how far apart they can be. Two games are therefore counted
 * into the spread that nobody played, one far above the mean and one as far below. They matter
 * where few games differ and are soon drowned where many do. How often the range of a real position
 * ever leaves the truth out, from the first look on, is tested.
 */
final class MeanRange {
  /** Games at which the band is tightest; ten times more or fewer makes it a tenth wider. */
  private static final double TIGHTEST = 2_000;

  /** How far the two games lie away, as a part of the most that two games can differ by. */
  private static final double FAR = 1 / 8.0;

  private final double apart;
  private long n;
  private long sum;
  private long squares;

  /**
   * A mean of nothing.
   *
   * @param apart the most that two values can differ by; no value is further from 0
   */
  MeanRange(long apart) {
    this.apart = apart;
  }

  /**
   * Adds values.
   *
   * @param values how many
   * @param total their sum
   * @param ofSquares the sum of their squares
   */
  void add(long values, long total, long ofSquares) {
    n += values;
    sum += total;
    squares += ofSquares;
  }

  long n() {
    return n;
  }

  double mean() {
    return n == 0 ? 0 : (double) sum / n;
  }

  /**
   * The mean with its range.
   *
   * @param alpha chance to miss the truth ever, both sides together
   */
  Ranged range(double alpha) {
    if (n == 0) {
      return new Ranged(0, -apart, apart);
    }
    double far = apart * FAR;
    double spread = squares - mean() * sum + 2 * far * far;
    double bound = AlwaysValid.normalMixture(n, AlwaysValid.tuning(TIGHTEST, alpha), alpha);
    double half = FastMath.sqrt(Math.max(0, spread) / n) * bound / n;
    return Ranged.around(mean(), half, -apart, apart);
  }
}
