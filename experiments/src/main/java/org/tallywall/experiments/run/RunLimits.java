package org.tallywall.experiments.run;

import java.util.function.LongSupplier;

/**
 * What a run may use.
 *
 * @param threads how many threads play, 1 or more
 * @param decisionMillis how long a player may take for an answer, in milliseconds
 * @param clock tells the time in nanoseconds, from any moment on
 */
public record RunLimits(int threads, long decisionMillis, LongSupplier clock) {
  private static final long USUAL_MILLIS = 10_000;
  private static final long MILLIS = 1_000;

  /**
   * The usual time for decisions: ten seconds.
   *
   * @param threads how many threads play
   * @return the limits
   */
  public static RunLimits of(int threads) {
    return new RunLimits(threads, USUAL_MILLIS, System::nanoTime);
  }

  /**
   * Another time for decisions.
   *
   * @param threads how many threads play
   * @param decisionSeconds how long a player may take for an answer, in seconds
   * @return the limits
   */
  public static RunLimits of(int threads, long decisionSeconds) {
    return new RunLimits(threads, MILLIS * decisionSeconds, System::nanoTime);
  }
}
