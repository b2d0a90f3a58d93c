package org.tallywall.experiments.run;

import java.util.concurrent.atomic.LongAdder;

/** How far a run is, and whether it is to end. Safe for use by several threads. */
public final class RunState {
  private final long deals;
  private final int blockSize;
  private final long faultsBorne;
  private final LongAdder played = new LongAdder();
  private final LongAdder stored = new LongAdder();
  private volatile boolean stopped;
  private volatile boolean abandoned;
  private volatile boolean exitCalled;

  /**
   * A run that has not begun.
   *
   * @param deals deals to play in all
   * @param blockSize deals in a block
   * @param faultsBorne how many deals players may spoil before the run stops
   */
  public RunState(long deals, int blockSize, long faultsBorne) {
    this.deals = deals;
    this.blockSize = blockSize;
    this.faultsBorne = faultsBorne;
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
   * How many deals players may spoil before the run stops.
   *
   * @return 0 or more
   */
  public long faultsBorne() {
    return faultsBorne;
  }

  /**
   * Blocks to play in all.
   *
   * @return 1 or more
   */
  public long blocks() {
    return Block.count(deals, blockSize);
  }

  /**
   * A block of the run.
   *
   * @param number its number, from 0
   * @return the block
   */
  public Block block(long number) {
    return Block.of(number, deals, blockSize);
  }

  /**
   * Deals played in this run.
   *
   * @return 0 or more
   */
  public long played() {
    return played.sum();
  }

  /**
   * Deals that an earlier run had played and stored.
   *
   * @return 0 or more
   */
  public long stored() {
    return stored.sum();
  }

  /**
   * Deals done, in this run or an earlier one.
   *
   * @return 0 or more
   */
  public long done() {
    return played() + stored();
  }

  /** Asks the run to begin no more blocks; those being played are played to their end. */
  public void stop() {
    stopped = true;
  }

  /** Asks the run to leave the blocks that are being played after the deal at hand. */
  public void abandon() {
    abandoned = true;
    stopped = true;
  }

  /**
   * Whether no more blocks are to begin.
   *
   * @return true once {@link #stop()} or {@link #abandon()} was called
   */
  public boolean stopped() {
    return stopped;
  }

  /**
   * Whether blocks are to be left in the middle.
   *
   * @return true once {@link #abandon()} was called
   */
  public boolean abandoned() {
    return abandoned;
  }

  /** Something in this process has told the whole program to end, and it was not the user. */
  public void exitIsCalled() {
    exitCalled = true;
  }

  boolean exitCalled() {
    return exitCalled;
  }

  /** A deal was played. */
  public void dealPlayed() {
    played.increment();
  }

  void dealsStored(long number) {
    stored.add(number);
  }
}
