package org.tallywall.experiments.night;

import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import org.tallywall.experiments.design.Noticed;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.run.BlockKeeper;
import org.tallywall.experiments.run.BlockReader;
import org.tallywall.experiments.run.BlockResult;
import org.tallywall.experiments.run.LocalRun;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.store.BlockStore;
import org.tallywall.experiments.store.FreeDisk;
import org.tallywall.experiments.study.Extent;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;

/** Measures for a second how long a run would take, or the rest of one. Writes nothing. */
public final class DryRun implements BlockReader {
  private static final int SMALL_BLOCK = 5;
  private static final long WARM_UP_NANOS = 2_000_000_000L;
  private static final long MEASURED_NANOS = 1_000_000_000L;

  private final ReadyStudy ready;
  private final RunState state;
  private final StudyTally tried;
  private final StudyTally stored;
  private final long start = System.nanoTime();
  private long storedDeals;
  private long storedBlocks;
  private long measuredFrom;
  private long playedBefore;
  private double dealsPerSecond;

  DryRun(ReadyStudy ready) {
    this.ready = ready;
    this.tried = ready.emptyTally();
    this.stored = ready.emptyTally();
    this.state =
        new RunState(
            Extent.MOST_DEALS, SMALL_BLOCK, ready.study().extent().patience().faultsBorne());
  }

  /**
   * What was measured.
   *
   * @param gamesPerDeal games that a deal has
   * @param dealsPerSecond deals that this machine plays in a second
   * @param blocks blocks that are still to be played
   * @param left deals that are still to be played
   * @param need bytes that the results of the whole study take
   * @param free bytes that are free where they would go
   * @param notices how small a difference the whole run will notice; empty where the study compares
   *     nothing, or may stop early
   * @param known deals by which that is told
   */
  public record Measured(
      double gamesPerDeal,
      double dealsPerSecond,
      long blocks,
      long left,
      long need,
      long free,
      List<Noticed> notices,
      long known) {}

  /** Counts what an earlier part of the run has stored. */
  void resumes(BlockStore store) {
    RunState whole = ready.state();
    BitSet found = store.found().get(0, (int) whole.blocks());
    for (int number = found.nextSetBit(0); number >= 0; number = found.nextSetBit(number + 1)) {
      BlockResult result = store.kept(whole.block(number));
      if (result != null) {
        stored.add(result.tally());
        storedBlocks++;
        storedDeals += result.block().deals();
      }
    }
  }

  /** Plays for a short while and keeps nothing. */
  Measured measure(RunLimits limits, Path target) {
    new LocalRun(ready::player, state, limits, BlockKeeper.NONE).play(this);
    Study study = ready.study();
    StudyTally known = stored.deals() > 0 ? stored : tried;
    boolean fixed = study.extent().until().isEmpty() && known.deals() > 0;
    return new Measured(
        tried.deals() == 0 ? 0 : (double) tried.games() / tried.deals(),
        dealsPerSecond,
        ready.state().blocks() - storedBlocks,
        study.extent().deals() - storedDeals,
        DiskNeed.of(ready),
        FreeDisk.of(target).free(),
        fixed ? PlayedDesign.of(study).notices(study, known) : List.of(),
        known.deals());
  }

  @Override
  public boolean read(BlockResult result) {
    tried.add(result.tally());
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
