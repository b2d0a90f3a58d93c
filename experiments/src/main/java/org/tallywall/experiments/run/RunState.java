package org.tallywall.experiments.run;

import java.util.concurrent.atomic.LongAdder;

/** How far a run is, and whether it is to stop. Safe for use by several threads. */
public final class RunState {
  private final long deals;
  private final int blockSize;
  private final long faultsBorne;
  private final LongAdder played = new LongAdder();
  private volatile boolean stopped;

  /**
   * A run that has not begun.
   *
   * @param deals deals to play in all
   * @param blockSize deals in a block
   * @param faultsBorne how many games players may spoil before the run stops
   */
  public RunState(long deals, int blockSize, long faultsBorne) {
    this.deals = deals;
    this.faultsBorne = faultsBorne;
    this.blockSize = blockSize;
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
   * Deals in a block.
   *
   * @return 1 or more
   */
  public int blockSize() {
    return blockSize;
  }

  /**
   * How many games players may spoil before the run stops.
   *
   * @return 0 or more
   */
  public long faultsBorne() {
    return faultsBorne;
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
