package org.tallywall.experiments.review;

import org.tallywall.experiments.run.RunLimits;

/**
 * What a review may use. It plays in rounds and looks at its time between rounds alone, so it may
 * take a little longer.
 *
 * @param games games played at most, over all choices, 1 or more; each choice has one at least
 * @param nanos time at most, in nanoseconds
 * @param run threads, patience with players, and the clock
 */
public record ReviewLimits(long games, long nanos, RunLimits run) {
  /** No bound on games. */
  public static final long ANY_GAMES = Long.MAX_VALUE;

  /** No bound on time. */
  public static final long ANY_TIME = Long.MAX_VALUE;
}
