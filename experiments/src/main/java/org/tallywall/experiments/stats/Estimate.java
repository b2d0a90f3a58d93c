package org.tallywall.experiments.stats;

import java.util.Optional;

/**
 * A value computed from deals, with its interval where one can be given.
 *
 * @param value the estimate
 * @param interval its limits; empty where one deal, or none, tells nothing about the spread
 * @param method how the limits were computed
 */
public record Estimate(double value, Optional<Interval> interval, Method method) {
  /**
   * An estimate with limits.
   *
   * @param value the estimate
   * @param interval its limits
   * @param method how they were computed
   * @return the estimate
   */
  public static Estimate of(double value, Interval interval, Method method) {
    return new Estimate(value, Optional.of(interval), method);
  }
}
