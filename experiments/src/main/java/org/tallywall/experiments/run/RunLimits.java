package org.tallywall.experiments.run;

/**
 * What a run may use.
 *
 * @param threads how many threads play, 1 or more
 * @param decisionMillis how long a player may take for an answer, in milliseconds
 */
public record RunLimits(int threads, long decisionMillis) {
  private static final long USUAL_MILLIS = 10_000;

  /**
   * The usual time for decisions: ten seconds.
   *
   * @param threads how many threads play
   * @return the limits
   */
  public static RunLimits of(int threads) {
    return new RunLimits(threads, USUAL_MILLIS);
  }
}
