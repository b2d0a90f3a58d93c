package org.tallywall.experiments.night;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.Ending;
import org.tallywall.experiments.run.GreedyPlayerException;
import org.tallywall.experiments.run.LocalRun;
import org.tallywall.experiments.run.PlayerFaultException;
import org.tallywall.experiments.run.RunEndingPlayerException;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.run.SlowPlayerException;
import org.tallywall.experiments.store.BlockStore;
import org.tallywall.experiments.store.Checkpoint;
import org.tallywall.experiments.store.FolderWatch;
import org.tallywall.experiments.store.FreeDisk;
import org.tallywall.experiments.store.Manifest;
import org.tallywall.experiments.store.OnExisting;
import org.tallywall.experiments.store.RecordWriter;
import org.tallywall.experiments.store.RunFolder;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.results.ResultNames;

/** Plays a study and fills its results folder. */
public final class StudyRunner {
  private static final long MILLIS = 1_000;

  private final ReadyStudy ready;
  private final Study study;
  private final RunLimits limits;
  private final String version;
  private final List<String> command;
  private final RunState state;
  private final Merger merged;
  private final FaultWords faults;
  private RunListener listener = new RunListener() {};

  /**
   * A runner.
   *
   * @param study the study
   * @param threads how many threads play
   * @param version the program's version
   * @param command the command that was typed, word by word
   */
  public StudyRunner(Study study, int threads, String version, List<String> command) {
    this(study, threads, System::nanoTime, version, command);
  }

  /**
   * A runner whose slow players are noticed by a clock of the caller's.
   *
   * @param study the study
   * @param threads how many threads play
   * @param clock tells the time in nanoseconds, from any moment on
   * @param version the program's version
   * @param command the command that was typed, word by word
   */
  public StudyRunner(
      Study study, int threads, LongSupplier clock, String version, List<String> command) {
    this.study = study;
    this.limits =
        new RunLimits(threads, MILLIS * study.extent().patience().decisionSeconds(), clock);
    this.version = version;
    this.command = command;
    this.ready = new ReadyStudy(study);
    this.state = ready.state();
    this.merged = new Merger(ready);
    this.faults = new FaultWords(study);
  }

  /**
   * Who hears how the run gets on.
   *
   * @param hears the listener
   */
  public void tell(RunListener hears) {
    listener = hears;
  }

  /**
   * How far the run is; it can be stopped here.
   *
   * @return the state
   */
  public RunState state() {
    return state;
  }

  /**
   * Plays everything that has not been played before.
   *
   * @param target the results folder
   * @param onExisting what to do where there is one already
   * @return how it went
   */
  public RunOutcome run(Path target, OnExisting onExisting) {
    Manifest wanted = Manifest.begin(study, version, command, limits.threads(), Instant.now());
    FreeDisk disk = FreeDisk.of(target);
    try (RunFolder folder =
        RunFolder.open(
            target,
            onExisting,
            wanted,
            StudyJson.text(study, target),
            () -> disk.check(DiskNeed.of(ready)))) {
      folder.remarks().forEach(listener::remark);
      if (folder.complete()) {
        return completeAlready(folder);
      }
      listener.opened(target);
      Ending ending = play(folder, disk);
      if (ending == Ending.STOPPED) {
        return stopped(folder);
      }
      complete(folder);
      listener.complete(target);
      return outcome(RunOutcome.End.COMPLETE);
    }
  }

  /**
   * Measures for a few seconds what a run would take; writes nothing.
   *
   * @param target where the results would go
   * @param onExisting what would be done where there are some already
   * @return what was measured; empty where the run is complete
   */
  public Optional<DryRun.Measured> tryOut(Path target, OnExisting onExisting) {
    DryRun trial = new DryRun(ready);
    if (onExisting == OnExisting.RESUME) {
      Manifest wanted = Manifest.begin(study, version, command, limits.threads(), Instant.now());
      if (RunFolder.nothingLeft(target, wanted, StudyJson.text(study, target))) {
        return Optional.empty();
      }
      Path blocks = target.resolve(ResultNames.BLOCKS);
      trial.resumes(new BlockStore(blocks, wanted.digest(), ready.codec(), (block, what) -> {}));
    }
    return Optional.of(measured(trial, target));
  }

  /**
   * Looks whether a run may begin in a folder; writes nothing.
   *
   * @param target where the results would go
   * @param onExisting what would be done where there are some already
   * @return why the run would be refused, and what to write instead; empty where it would not be
   */
  public Optional<String> refusal(Path target, OnExisting onExisting) {
    Manifest wanted = Manifest.begin(study, version, command, limits.threads(), Instant.now());
    return RunFolder.refusal(target, onExisting, wanted, StudyJson.text(study, target));
  }

  private DryRun.Measured measured(DryRun trial, Path target) {
    try {
      return trial.measure(limits, target);
    } catch (PlayerFaultException fault) {
      throw new FailedException(faults.fault(fault.fault(), study.source().study()), fault);
    } catch (RunEndingPlayerException end) {
      throw new FailedException(faults.ended(end, study.source().study()) + allowed(end), end);
    }
  }

  private Ending play(RunFolder folder, FreeDisk disk) {
    listener.begins(state);
    try (RecordWriter records = records(folder);
        FolderWatch watch = new FolderWatch(folder, disk, state::stop)) {
      merged.writeRecords(records);
      Ending ending = blocks(folder);
      if (ending == Ending.STOPPED && watch.diskNearlyFull()) {
        throw new FailedException("the disk of \"" + folder.target() + "\" is nearly full");
      }
      return ending;
    } catch (PlayerFaultException fault) {
      throw failed(folder, faults.fault(fault.fault(), folder.study()) + borne(), fault);
    } catch (RunEndingPlayerException end) {
      throw failed(folder, faults.ended(end, folder.study()) + allowed(end), end);
    } catch (FailedException failure) {
      throw failed(folder, failure.getMessage(), failure);
    } finally {
      listener.ends();
    }
  }

  /** What the user may do about a player that ended the run, beside changing it. */
  private String allowed(RunEndingPlayerException end) {
    if (end instanceof SlowPlayerException) {
      return "; \"decision-seconds\" in the study allows more";
    } else if (end instanceof GreedyPlayerException && !faults.ownPlayer(end)) {
      return "; give more memory, as in TALLYWALL_JAVA_OPTS=-Xmx1g, or take fewer --threads";
    }
    return "";
  }

  private Ending blocks(RunFolder folder) {
    BlockStore store =
        new BlockStore(
            folder.blocks(),
            folder.manifest().digest(),
            ready.codec(),
            (block, what) -> spoiled(folder.target(), block, what));
    Ending ending = new LocalRun(ready::player, state, limits, store).play(merged);
    if (ending == Ending.ENOUGH) {
      store.dropFrom(merged.blocks());
    }
    return ending;
  }

  private void spoiled(Path target, Block block, Checkpoint.State what) {
    if (what == Checkpoint.State.OUTDATED) {
      throw new WrongInputException(
          "the blocks in \""
              + target
              + "\" were stored by a version of tallywall that counts other things, so the run"
              + " cannot go on from them; go on with that version, or write --on-existing overwrite"
              + " to start over");
    }
    listener.spoiled(block, what);
  }

  private RecordWriter records(RunFolder folder) {
    return study.extent().recorded() == 0
        ? null
        : new RecordWriter(folder.growing(ResultNames.RECORDS), true);
  }

  private String borne() {
    long borne = study.extent().patience().faultsBorne();
    return borne == 0
        ? "; the study allows no failed deals (\"failed-deals-allowed\")"
        : "; the study allows "
            + Words.count(borne, "failed deal", "failed deals")
            + " (\"failed-deals-allowed\") and this is one more";
  }

  private FailedException failed(RunFolder folder, String message, RuntimeException cause) {
    leave(folder);
    return new FailedException(message + ". " + whatIsKept(folder.target()), cause);
  }

  /** Leaves the folder as one that can be looked at, and gone on with. */
  private void leave(RunFolder folder) {
    folder.keep();
    deleteRecords(folder);
    try {
      folder.stopped(merged.done());
    } catch (FailedException alsoUnwritten) {
      // The manifest that stands there says that the run is not complete, which is true.
    }
  }

  private String whatIsKept(Path target) {
    return Files.isRegularFile(target.resolve(ResultNames.MANIFEST))
        ? "Everything played so far is kept; " + goOn()
        : "The results folder \""
            + target
            + "\" is not there any more; if it was moved, move it back and "
            + goOn();
  }

  /**
   * Says how to go on with the run.
   *
   * @return the words, with the command
   */
  public String goOn() {
    return "go on with: " + Words.resuming(command);
  }

  private RunOutcome stopped(RunFolder folder) {
    deleteRecords(folder);
    long kept = kept(folder);
    if (kept > 0) {
      folder.stopped(merged.done());
    }
    return new RunOutcome(RunOutcome.End.STOPPED, kept);
  }

  /** Deals of all blocks that are stored, also of those that this run had not come to yet. */
  private long kept(RunFolder folder) {
    return BlockStore.stored(folder.blocks()).stream()
        .filter(number -> number < state.blocks())
        .mapToLong(number -> state.block(number).deals())
        .sum();
  }

  private static void deleteRecords(RunFolder folder) {
    try {
      Files.deleteIfExists(folder.growing(ResultNames.RECORDS));
    } catch (IOException staysThere) {
      // A run that goes on writes it anew.
    }
  }

  private void complete(RunFolder folder) {
    if (merged.done().deals() == 0) {
      leave(folder);
      throw new FailedException(
          "players failed in every deal that was to be counted, so nothing is left to count; the first: "
              + faults.fault(merged.faults().get(0), folder.study()));
    }
    Path records = study.extent().recorded() == 0 ? null : folder.growing(ResultNames.RECORDS);
    try {
      folder
          .complete(ResultFiles.of(merged, faults, records), merged.done())
          .forEach(listener::remark);
    } catch (FailedException failure) {
      throw failed(folder, failure.getMessage(), failure);
    }
  }

  /** What a complete run found stands in its files; papers that are missing are made. */
  private RunOutcome completeAlready(RunFolder folder) {
    if (!Files.exists(folder.target().resolve(ResultNames.REPORT))) {
      listener.complete(folder.target());
    }
    return outcome(RunOutcome.End.COMPLETE_BEFORE);
  }

  private RunOutcome outcome(RunOutcome.End end) {
    return new RunOutcome(end, state.done());
  }
}
