package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.List;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.run.BlockKeeper;
import org.tallywall.experiments.run.BlockReader;
import org.tallywall.experiments.run.BlockResult;
import org.tallywall.experiments.run.LocalRun;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.run.StudyPlayer;
import org.tallywall.experiments.store.FreeDisk;
import org.tallywall.experiments.study.Extent;
import org.tallywall.experiments.study.Study;

/** Says what a run would do, and measures for a second how long it would take. Writes nothing. */
final class DryRun implements BlockReader {
  private static final int SMALL_BLOCK = 5;
  private static final long WARM_UP_NANOS = 2_000_000_000L;
  private static final long MEASURED_NANOS = 1_000_000_000L;
  private static final long MIB = 1L << 20;

  private final Study study;
  private final TableSetup setup;
  private final RunState state;
  private final long start = System.nanoTime();
  private long measuredFrom;
  private long playedBefore;
  private double dealsPerSecond;
  private long deals;
  private long games;

  DryRun(Study study, TableSetup setup) {
    this.study = study;
    this.setup = setup;
    this.state =
        new RunState(Extent.MOST_DEALS, SMALL_BLOCK, study.extent().patience().faultsBorne());
  }

  /** Plays for a short while and keeps nothing. */
  void measure(RunLimits limits) {
    new LocalRun(pulse -> new StudyPlayer(study, setup, pulse), state, limits, BlockKeeper.NONE)
        .play(this);
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

  /** What would be done, a sentence each. */
  List<String> sentences(Path target, FreeDisk disk, long need, int threads) {
    long all = study.extent().deals();
    double each = deals == 0 ? 0 : (double) games / deals;
    String most = study.extent().until().isPresent() ? "at most " : "";
    long blocks = StudyRunner.state(study).blocks();
    return List.of(
        study.question().name()
            + ": "
            + most
            + Words.count(all, "deal", "deals")
            + ", "
            + most
            + "about "
            + Words.count(Math.round(all * each), "game", "games")
            + ", in "
            + Words.count(blocks, "block", "blocks")
            + " of "
            + study.extent().blockSize()
            + " deals.",
        "Results would go to "
            + target
            + ": a file for every block, at the end the tables and columns.md"
            + (study.extent().recorded() == 0
                ? ""
                : ", and the records of " + Words.count(study.extent().recorded(), "deal", "deals"))
            + ".",
        "They would take about "
            + Words.grouped(need / MIB + 1)
            + " MiB; "
            + Words.grouped(disk.free() / MIB)
            + " MiB are free there.",
        "With "
            + Words.count(threads, "thread", "threads")
            + " this machine plays "
            + Words.grouped(Math.round(dealsPerSecond))
            + " deals a second ("
            + Words.grouped(Math.round(dealsPerSecond * each))
            + " games), so it would take "
            + most
            + "about "
            + ProgressPrinter.duration(Math.round(all / dealsPerSecond))
            + ".",
        "Nothing was written.");
  }
}
