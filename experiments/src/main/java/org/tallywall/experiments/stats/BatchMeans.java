package org.tallywall.experiments.stats;

/**
 * The mean of one long dependent run, its error judged by the means of equal batches (Law,
 * Simulation Modeling and Analysis, 2013, chapter 9).
 *
 * @param mean the mean of all values
 * @param standardError standard deviation of the batch means, divided by the root of their number
 * @param batches how many batches
 */
public record BatchMeans(double mean, double standardError, int batches) {
  /**
   * Cuts a run into batches.
   *
   * @param values the run; a multiple of the number of batches
   * @param batches how many, 2 or more
   * @return the mean with its error
   * @throws IllegalArgumentException if the batches are not equal
   */
  public static BatchMeans of(double[] values, int batches) {
    if (batches < 2 || values.length == 0 || values.length % batches != 0) {
      throw new IllegalArgumentException(
          values.length + " values cannot be cut into " + batches + " equal batches");
    }
    int size = values.length / batches;
    double[] means = new double[batches];
    double mean = 0;
    for (int at = 0; at < values.length; at++) {
      means[at / size] += values[at] / size;
    }
    for (double one : means) {
      mean += one / batches;
    }
    double squares = 0;
    for (double one : means) {
      squares += (one - mean) * (one - mean);
    }
    return new BatchMeans(mean, Math.sqrt(squares / (batches - 1) / batches), batches);
  }

  /**
   * Student's t interval over batches.
   *
   * @param confidence the level, between 0 and 1
   * @return the interval
   */
  public Interval interval(double confidence) {
    return Interval.around(mean, Moments.quantile(batches - 1L, confidence) * standardError);
  }
}
