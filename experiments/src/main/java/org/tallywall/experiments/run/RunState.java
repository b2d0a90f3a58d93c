package org.tallywall.experiments.run;

import java.util.concurrent.atomic.LongAdder;

/** How far a run is, and whether it is to stop. Safe for use by several threads. */
public final class RunState {
  private final long deals;
  private final LongAdder played = new LongAdder();
  private volatile boolean stopped;

  /**
   * A run that has not begun.
   *
   * @param deals deals to play in all
   */
  public RunState(long deals) {
    this.deals = deals;
  }

  /**
   * Deals to play in all.
   *
   * @return 1 or more
   */
  public long deals() {
    return deals;
  }

  /**
   * Deals played so far.
   *
   * @return 0 or more
   */
  public long played() {
    return played.sum();
  }

  /** Asks the run to stop after the games being played. */
  public void stop() {
    stopped = true;
  }

  /**
   * Whether the run is to stop.
   *
   * @return true once {@link #stop()} was called
   */
  public boolean stopped() {
    return stopped;
  }

  void dealPlayed() {
    played.increment();
  }
}
