package org.tallywall.experiments.night;

import java.nio.file.Path;
import org.tallywall.experiments.run.BlockKeeper;
import org.tallywall.experiments.run.BlockReader;
import org.tallywall.experiments.run.BlockResult;
import org.tallywall.experiments.run.LocalRun;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.store.FreeDisk;
import org.tallywall.experiments.study.Extent;

/** Measures for a second how long a run would take. Writes nothing. */
public final class DryRun implements BlockReader {
  private static final int SMALL_BLOCK = 5;
  private static final long WARM_UP_NANOS = 2_000_000_000L;
  private static final long MEASURED_NANOS = 1_000_000_000L;

  private final ReadyStudy ready;
  private final RunState state;
  private final long start = System.nanoTime();
  private long measuredFrom;
  private long playedBefore;
  private double dealsPerSecond;
  private long deals;
  private long games;

  DryRun(ReadyStudy ready) {
    this.ready = ready;
    this.state =
        new RunState(
            Extent.MOST_DEALS, SMALL_BLOCK, ready.study().extent().patience().faultsBorne());
  }

  /**
   * What was measured.
   *
   * @param gamesPerDeal games that a deal has
   * @param dealsPerSecond deals that this machine plays in a second
   * @param blocks blocks of the whole study
   * @param need bytes that its results take
   * @param free bytes that are free where they would go
   */
  public record Measured(
      double gamesPerDeal, double dealsPerSecond, long blocks, long need, long free) {}

  /** Plays for a short while and keeps nothing. */
  Measured measure(RunLimits limits, Path target) {
    new LocalRun(ready::player, state, limits, BlockKeeper.NONE).play(this);
    return new Measured(
        deals == 0 ? 0 : (double) games / deals,
        dealsPerSecond,
        ready.state().blocks(),
        DiskNeed.of(ready),
        FreeDisk.of(target).free());
  }

  @Override
  public boolean read(BlockResult result) {
    deals += result.tally().deals();
    games += result.tally().games();
    long now = System.nanoTime();
    if (measuredFrom == 0) {
      if (now - start >= WARM_UP_NANOS) {
        measuredFrom = now;
        playedBefore = state.played();
      }
      return true;
    }
    if (now - measuredFrom < MEASURED_NANOS) {
      return true;
    }
    dealsPerSecond = (state.played() - playedBefore) * 1e9 / (now - measuredFrom);
    return false;
  }
}
