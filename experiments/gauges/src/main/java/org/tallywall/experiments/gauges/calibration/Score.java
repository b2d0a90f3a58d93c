package org.tallywall.experiments.gauges.calibration;

import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.PairMoments;

/**
 * How well chances fit what happened, one number for each, less being better: the squared error
 * (Brier, Monthly Weather Review 78, 1950, 1–3) and minus the logarithm of the chance of what
 * happened (Good, J. R. Statist. Soc. B 14, 1952, 107–114), both from memory; also by how much each
 * differs from another way of saying them about the same decisions.
 */
final class Score {
  /** Chances are taken to be at least this far from 0 and 1 for the logarithm. */
  static final double LEAST = 1e-4;

  /** Scores are added up as whole numbers of this part, so that the sums are exact. */
  private static final double UNIT = 1e9;

  private final GameSums square = new GameSums();
  private final GameSums logarithm = new GameSums();
  private final GameSums squareMore = new GameSums();
  private final GameSums logarithmMore = new GameSums();

  /**
   * Notes one decision.
   *
   * @param chance what was said
   * @param other what was said the other way
   * @param came whether it happened
   */
  void note(double chance, double other, boolean came) {
    square.add(units(square(chance, came)), 1);
    logarithm.add(units(logarithm(chance, came)), 1);
    squareMore.add(units(square(chance, came) - square(other, came)), 1);
    logarithmMore.add(units(logarithm(chance, came) - logarithm(other, came)), 1);
  }

  private static long units(double score) {
    return Math.round(score * UNIT);
  }

  private static double square(double chance, boolean came) {
    double missed = came ? 1 - chance : chance;
    return missed * missed;
  }

  private static double logarithm(double chance, boolean came) {
    double given = came ? chance : 1 - chance;
    return -StrictMath.log(Math.min(1 - LEAST, Math.max(LEAST, given)));
  }

  /** The game is over. */
  void endGame() {
    square.endGame();
    logarithm.endGame();
    squareMore.endGame();
    logarithmMore.endGame();
  }

  /** Mean squared error. */
  Mean squared() {
    return mean(square);
  }

  /** By how much it is larger than the other's. */
  Mean squaredMore() {
    return mean(squareMore);
  }

  /** Mean of minus the logarithm. */
  Mean logarithmic() {
    return mean(logarithm);
  }

  /** By how much it is larger than the other's. */
  Mean logarithmicMore() {
    return mean(logarithmMore);
  }

  private static Mean mean(GameSums sums) {
    PairMoments moments = sums.moments();
    double value = moments.ratio();
    Interval limits = moments.estimate(0.95).interval().orElse(new Interval(value, value));
    return new Mean(value / UNIT, limits.low() / UNIT, limits.high() / UNIT);
  }

  /**
   * A mean over decisions with its limits at 95 %, games as clusters; the limits are the mean
   * itself where all decisions came to the same, as beside the same way of judging.
   *
   * @param value the mean
   * @param low lower limit
   * @param high upper limit
   */
  record Mean(double value, double low, double high) {}
}
