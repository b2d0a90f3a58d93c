package org.tallywall.experiments.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.NearHands;
import org.tallywall.core.hand.RackMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.hand.TileBits;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Which tiles of a dealt rack to pass. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class PassBenchmark {
  private static final int HANDS = 1500;

  private Reach reach;
  private Rack[] racks;
  private CountsPlayer counts;
  private final RackMeter meter = new RackMeter();
  private final NearHands near = new NearHands();
  private final TileBits last = new TileBits();
  private final long[] worth = new long[Tile.KINDS];
  private int next;

  /** For the harness. */
  public PassBenchmark() {}

  /** Draws the card and deals the racks. */
  @Setup
  public void deal() {
    ConcreteHands card = BenchmarkCards.of(HANDS);
    reach = card.closed();
    racks = Racks.dealt();
    counts = new CountsPlayer(card);
    int[] everything = new int[Tile.KINDS];
    java.util.Arrays.fill(everything, HandMeter.NONE);
    meter.obtainable(everything);
  }

  private Rack turn() {
    next = next + 1 & Racks.COUNT - 1;
    return racks[next];
  }

  /**
   * The worth of every tile of the rack to the hands nearest to it, from one search.
   *
   * @return the worth by kind
   */
  @Benchmark
  public long[] worthOfEveryTile() {
    Rack rack = turn();
    meter.hold(rack, reach);
    meter.nearest(1, near);
    java.util.Arrays.fill(worth, 0);
    last.setLast(rack);
    for (int at = 0; at < near.count(); at++) {
      reach.addWanted(near.hand(at), last, 1, worth);
    }
    return worth;
  }

  /**
   * The baseline: a full scan for every three tiles.
   *
   * @return three kinds
   */
  @Benchmark
  public int[] everyThreeByCounts() {
    return counts.bestThree(turn());
  }
}
