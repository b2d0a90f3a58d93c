package org.tallywall.experiments.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.answer.Summary;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.Ending;
import org.tallywall.experiments.run.LocalRun;
import org.tallywall.experiments.run.Plans;
import org.tallywall.experiments.run.PlayerFaultException;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.run.SlowPlayerException;
import org.tallywall.experiments.run.StudyPlayer;
import org.tallywall.experiments.store.BlockCodec;
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
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.text.Lettering;
import org.tallywall.reports.text.TextTable;

/** Plays a study and fills its results folder. */
final class StudyRunner {
  private static final long MILLIS = 1_000;

  private final Console console;
  private final Study study;
  private final RunLimits limits;
  private final List<String> command;
  private final TableSetup setup;
  private final RunState state;
  private final Merger merged;
  private final FaultWords faults;
  private Consumer<Path> opened = folder -> {};
  private Consumer<Path> completed = folder -> {};
  private ProgressPrinter progress;

  StudyRunner(Console console, Study study, int threads, List<String> command) {
    this(console, study, threads, System::nanoTime, command);
  }

  /** A run whose slow players are noticed by a clock of the caller's. */
  StudyRunner(Console console, Study study, int threads, LongSupplier clock, List<String> command) {
    this.console = console;
    this.study = study;
    this.limits =
        new RunLimits(threads, MILLIS * study.extent().patience().decisionSeconds(), clock);
    this.command = command;
    this.setup = new TableSetup(new ConcreteHands(study.card()), study.rules());
    this.state = state(study);
    this.merged = new Merger(study, setup);
    this.faults = new FaultWords(study);
  }

  /** Who is told when the results folder is ready and nothing has been played yet. */
  void whenOpened(Consumer<Path> listener) {
    opened = listener;
  }

  /** Who makes papers of the results, when they are complete; it writes report.html last. */
  void whenComplete(Consumer<Path> listener) {
    completed = listener;
  }

  static RunState state(Study study) {
    return new RunState(
        study.extent().deals(),
        study.extent().blockSize(),
        study.extent().patience().faultsBorne());
  }

  static BlockCodec codec(Study study, TableSetup setup) {
    return new BlockCodec(() -> new StudyTally(Plans.of(study), setup));
  }

  /** Plays everything that has not been played before; returns the exit code. */
  int run(Path target, OnExisting onExisting) {
    Manifest wanted =
        Manifest.begin(study, Version.text(), command, limits.threads(), Instant.now());
    Interruption interruption = new Interruption(state, this::interrupted);
    try (RunFolder folder =
        RunFolder.open(target, onExisting, wanted, StudyJson.text(study, target))) {
      if (folder.complete()) {
        return completeAlready(folder);
      }
      FreeDisk disk = FreeDisk.of(target);
      disk.check(DiskNeed.of(study, codec(study, setup)));
      opened.accept(target);
      Ending ending = play(folder, disk);
      if (ending == Ending.STOPPED) {
        return stopped(folder);
      }
      complete(folder);
      completed.accept(target);
      summarise(target);
      return Program.DONE;
    } finally {
      interruption.end();
    }
  }

  /** Says what a run would do; writes nothing and returns the exit code. */
  int tryOut(Path target) {
    DryRun trial = new DryRun(study, setup);
    try {
      trial.measure(limits);
    } catch (PlayerFaultException fault) {
      throw new FailedException(faults.fault(fault.fault(), study.source().study()), fault);
    } catch (SlowPlayerException slow) {
      throw new FailedException(faults.slow(slow, study.source().study()), slow);
    }
    long need = DiskNeed.of(study, codec(study, setup));
    trial
        .sentences(target, FreeDisk.of(target), need, limits.threads())
        .forEach(sentence -> Words.wrapped(sentence, "", console.width()).forEach(console::say));
    return Program.DONE;
  }

  private Ending play(RunFolder folder, FreeDisk disk) {
    progress = new ProgressPrinter(console, state);
    try (RecordWriter records = records(folder);
        FolderWatch watch = new FolderWatch(folder, disk, state::stop)) {
      merged.writeRecords(records);
      Ending ending = blocks(folder);
      if (ending == Ending.STOPPED && watch.diskNearlyFull()) {
        throw new FailedException("the disk of \"" + folder.target() + "\" is nearly full");
      }
      return ending;
    } catch (PlayerFaultException fault) {
      throw failed(folder, faults.fault(fault.fault(), studyFile(folder)) + borne(), fault);
    } catch (SlowPlayerException slow) {
      throw failed(
          folder,
          faults.slow(slow, studyFile(folder)) + "; \"decision-seconds\" in the study allows more",
          slow);
    } catch (FailedException failure) {
      throw failed(folder, failure.getMessage(), failure);
    } finally {
      progress.end();
    }
  }

  private Ending blocks(RunFolder folder) {
    BlockStore store =
        new BlockStore(
            folder.blocks(),
            folder.manifest().digest(),
            codec(study, setup),
            (block, what) -> spoilt(folder.target(), block, what));
    LocalRun run =
        new LocalRun(pulse -> new StudyPlayer(study, setup, pulse), state, limits, store);
    Ending ending = run.play(merged);
    if (ending == Ending.ENOUGH) {
      store.dropFrom(merged.blocks());
    }
    return ending;
  }

  private RecordWriter records(RunFolder folder) {
    return study.extent().recorded() == 0
        ? null
        : new RecordWriter(folder.growing(ResultFiles.RECORDS), true);
  }

  private static Path studyFile(RunFolder folder) {
    return folder.target().resolve("study.json");
  }

  private String borne() {
    long borne = study.extent().patience().faultsBorne();
    return borne == 0
        ? "; the study bears no such faults (\"faults-borne\")"
        : "; the study bears "
            + Words.count(borne, "such fault", "such faults")
            + " (\"faults-borne\") and this is one more";
  }

  private void spoilt(Path target, Block block, Checkpoint.State what) {
    if (what == Checkpoint.State.OUTDATED) {
      throw new WrongInputException(
          "the blocks in \""
              + target
              + "\" were stored by a version of tallywall that counts other things, so the run"
              + " cannot go on from them; go on with that version, or write --on-existing overwrite"
              + " to start over");
    }
    progress.say(
        "tallywall: block %d (deals %s to %s) %s and is played again"
            .formatted(
                block.number(),
                Words.grouped(block.firstDeal()),
                Words.grouped(block.firstDeal() + block.deals() - 1),
                what == Checkpoint.State.FOREIGN ? "belongs to another run" : "is damaged"));
  }

  private void interrupted() {
    console.complain("tallywall: stopping as soon as the blocks being played are finished ...");
  }

  private FailedException failed(RunFolder folder, String message, RuntimeException cause) {
    folder.keep();
    try {
      folder.stopped(merged.done());
    } catch (FailedException alsoUnwritten) {
      // The manifest that stands there says that the run is not complete, which is true.
    }
    return new FailedException(message + ". Everything played so far is kept; " + goOn(), cause);
  }

  private int stopped(RunFolder folder) {
    deleteRecords(folder);
    String far =
        "tallywall: stopped after "
            + Words.grouped(state.done())
            + " of "
            + Words.count(state.deals(), "deal", "deals");
    if (state.done() == 0) {
      console.complain(far + "; nothing was written");
    } else {
      folder.stopped(merged.done());
      console.complain(far + "; they are kept in " + folder.target() + "; " + goOn());
    }
    return Program.STOPPED;
  }

  private String goOn() {
    return "go on with: " + Words.resuming(command);
  }

  private static void deleteRecords(RunFolder folder) {
    try {
      Files.deleteIfExists(folder.growing(ResultFiles.RECORDS));
    } catch (IOException staysThere) {
      // A run that goes on writes it anew.
    }
  }

  private void complete(RunFolder folder) {
    Path records = study.extent().recorded() == 0 ? null : folder.growing(ResultFiles.RECORDS);
    try {
      folder.complete(ResultFiles.of(merged, faults, records), merged.done());
    } catch (FailedException failure) {
      throw failed(folder, failure.getMessage(), failure);
    }
  }

  /** Adds up the blocks of a complete run, if they are still there, to say again what it found. */
  private int completeAlready(RunFolder folder) {
    if (!Files.exists(folder.target().resolve("report.html"))) {
      completed.accept(folder.target());
    }
    console.say("The run in " + folder.target() + " is complete; nothing was played.");
    console.say("");
    AtomicBoolean outdated = new AtomicBoolean();
    BlockStore store =
        new BlockStore(
            folder.blocks(),
            folder.manifest().digest(),
            codec(study, setup),
            (block, what) -> outdated.compareAndSet(false, what == Checkpoint.State.OUTDATED));
    Ending ending = new LocalRun(pulse -> (block, s) -> null, state, limits, store).play(merged);
    if (ending == Ending.STOPPED) {
      console.say(
          outdated.get()
              ? "Its blocks were stored by a version of tallywall that counts other things, so the"
                  + " short summary cannot be shown; the files in the folder stand as they are."
              : "Its blocks are gone or damaged, so there is no short table to be shown.");
    } else {
      summarise(folder.target());
    }
    return Program.DONE;
  }

  /** Prints the answer in words and short tables. */
  private void summarise(Path target) {
    Summary summary = Summary.of(merged.answer());
    for (String sentence : summary.sentences()) {
      Words.wrapped(sentence, "", console.width()).forEach(console::say);
      console.say("");
    }
    for (Table table : summary.tables()) {
      console.out().print(TextTable.text(table, console.width(), Lettering.UNICODE));
      console.say("");
    }
    if (!merged.faults().isEmpty()) {
      console.say(
          Words.count(merged.faults().size(), "deal was", "deals were")
              + " set aside because a player spoilt it; faults.csv lists them.");
    }
    console.say(
        "Everything is in "
            + target
            + "; open report.html there, or begin with notes.md; columns.md explains every column.");
  }
}
