package org.tallywall.core.random;

/**
 * Pearson's goodness of fit for tests: the sum over cells of (observed − expected)² / expected.
 *
 * <p>The critical values at a false-alarm chance of one in a million are those of the chi-square
 * distribution with Commons Math 3.6.1: {@code new
 * ChiSquaredDistribution(df).inverseCumulativeProbability(1 - 1e-6)}. Common ones agree with the
 * table of the NIST/SEMATECH e-Handbook, 1.3.6.7.4, where it reaches (0.001).
 */
public final class ChiSquare {
  private ChiSquare() {}

  /**
   * The statistic.
   *
   * @param observed counts by cell
   * @param chances the chance of each cell; they sum to one
   */
  public static double statistic(long[] observed, double[] chances) {
    long all = 0;
    double sumOfChances = 0;
    for (int cell = 0; cell < observed.length; cell++) {
      all += observed[cell];
      sumOfChances += chances[cell];
    }
    if (observed.length != chances.length || Math.abs(sumOfChances - 1) > 1e-9) {
      throw new IllegalArgumentException("chances sum to " + sumOfChances);
    }
    double sum = 0;
    for (int cell = 0; cell < observed.length; cell++) {
      double expected = all * chances[cell];
      double off = observed[cell] - expected;
      sum += off * off / expected;
    }
    return sum;
  }

  /** The statistic for cells that are all equally likely. */
  public static double even(long[] observed) {
    double[] chances = new double[observed.length];
    java.util.Arrays.fill(chances, 1.0 / observed.length);
    return statistic(observed, chances);
  }
}
