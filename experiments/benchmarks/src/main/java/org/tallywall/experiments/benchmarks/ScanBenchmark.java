package org.tallywall.experiments.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.RackMeter;
import org.tallywall.core.tile.Rack;

/** One scan of a whole card: how far a dealt rack is from its nearest hand. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class ScanBenchmark {
  private static final int PLAIN_KINDS = 34;
  private static final int STEP = 7;

  /** Least number of concrete hands of the card. */
  @Param({"1500"})
  public int hands;

  private ConcreteHands card;
  private Rack[] racks;
  private HandMeter[] held;
  private final HandMeter meter = new HandMeter();
  private final RackMeter changing = new RackMeter();
  private Rack rack;
  private int[] tiles;
  private int[] lines;
  private CountsMeter counts;
  private int next;

  /** For the harness. */
  public ScanBenchmark() {}

  /** Draws the card and deals the racks. */
  @Setup
  public void deal() {
    card = BenchmarkCards.of(hands);
    racks = Racks.dealt();
    rack = racks[0].copy();
    tiles = rack.tiles();
    counts = new CountsMeter(card);
    lines = new int[card.lines()];
    held = new HandMeter[racks.length];
    for (int at = 0; at < racks.length; at++) {
      held[at] = new HandMeter();
      held[at].hold(racks[at]);
    }
  }

  private int turn() {
    next = next + 1 & Racks.COUNT - 1;
    return next;
  }

  /**
   * The scan alone, the rack turned into bits beforehand; this is what the C program does.
   *
   * @return the distance
   */
  @Benchmark
  public int scan() {
    return held[turn()].least(card.closed());
  }

  /**
   * The rack turned into bits, then the scan.
   *
   * @return the distance
   */
  @Benchmark
  public int holdAndScan() {
    meter.hold(racks[turn()]);
    return meter.least(card.closed());
  }

  /**
   * The least distance of every line.
   *
   * @return the distances
   */
  @Benchmark
  public int[] leastByLine() {
    held[turn()].leastByLine(card.closed(), lines);
    return lines;
  }

  /**
   * One tile drawn and one thrown, measured by what is remembered.
   *
   * @return the distance
   */
  @Benchmark
  public int drawAndThrow() {
    int place = turn() % tiles.length;
    int drawn = STEP * next % PLAIN_KINDS;
    rack.add(drawn);
    changing.hold(rack, card.closed());
    int away = changing.least();
    rack.remove(tiles[place]);
    tiles[place] = drawn;
    return away;
  }

  /**
   * The baseline: counts in arrays.
   *
   * @return the distance
   */
  @Benchmark
  public int countsInArrays() {
    return counts.least(racks[turn()]);
  }
}
