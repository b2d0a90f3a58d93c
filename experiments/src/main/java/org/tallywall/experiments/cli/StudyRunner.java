package org.tallywall.experiments.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.answer.StudyAnswer;
import org.tallywall.experiments.answer.Summary;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.run.BlockResult;
import org.tallywall.experiments.run.Fault;
import org.tallywall.experiments.run.LocalRun;
import org.tallywall.experiments.run.Plans;
import org.tallywall.experiments.run.PlayerFaultException;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.run.StudyPlayer;
import org.tallywall.experiments.stop.Stopping;
import org.tallywall.experiments.store.Manifest;
import org.tallywall.experiments.store.RecordWriter;
import org.tallywall.experiments.store.RunFolder;
import org.tallywall.experiments.store.WholeFile;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.experiments.study.Until;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.markdown.ColumnsPage;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.text.Lettering;
import org.tallywall.reports.text.TextTable;

/** Plays a study and fills its results folder. */
final class StudyRunner {
  private final Console console;
  private final Study study;
  private final int threads;
  private final List<String> command;
  private final TableSetup setup;
  private final RunState state;
  private final StudyTally tally;
  private final Optional<Stopping> stopping;
  private boolean decided;

  StudyRunner(Console console, Study study, int threads, List<String> command) {
    this.console = console;
    this.study = study;
    this.threads = threads;
    this.command = command;
    this.setup = new TableSetup(new ConcreteHands(study.card()), study.rules());
    this.state = new RunState(study.extent().deals(), study.extent().blockSize(), 0);
    this.tally = new StudyTally(Plans.of(study), setup);
    this.stopping = study.extent().until().map(this::stopping);
  }

  private Stopping stopping(Until until) {
    Design.Arms arms =
        study.design() instanceof Design.Sweep sweep ? sweep.arms() : (Design.Arms) study.design();
    return new Stopping(
        until,
        study.question().measures(),
        tally.plan().pairs(),
        arms.seats().size(),
        study.question().confidence());
  }

  /** Plays everything; false where Ctrl-C stopped it and nothing was written. */
  boolean run(RunFolder folder) {
    Instant start = Instant.now();
    Interruption interruption = new Interruption(state);
    try (folder) {
      if (!play(folder)) {
        console.complain(
            "tallywall: stopped after "
                + Words.grouped(state.played())
                + " of "
                + Words.count(state.deals(), "deal", "deals")
                + "; nothing was written");
        return false;
      }
      write(folder, start);
      folder.complete();
      return true;
    } finally {
      interruption.end();
    }
  }

  private boolean play(RunFolder folder) {
    LocalRun run = new LocalRun(() -> new StudyPlayer(study, setup), state, threads);
    ProgressPrinter progress = new ProgressPrinter(console, state);
    try (RecordWriter records = records(folder)) {
      boolean whole = run.play(result -> merge(result, records));
      return whole || decided;
    } catch (PlayerFaultException fault) {
      throw new FailedException(fault(fault.fault()), fault);
    } finally {
      progress.end();
    }
  }

  /** Adds a block; after the block that decides a study nothing more is added. */
  private void merge(BlockResult result, RecordWriter records) {
    if (decided) {
      return;
    }
    if (records != null) {
      records.write(result.records());
    }
    if (stopping.isEmpty() || stopping.get().add(result.tally())) {
      tally.add(result.tally());
    }
    if (stopping.isPresent() && stopping.get().decision() == Stopping.Decision.REACHED) {
      decided = true;
      state.stop();
    }
  }

  private RecordWriter records(RunFolder folder) {
    return study.extent().recorded() == 0
        ? null
        : new RecordWriter(folder.file("records.jsonl.gz"), true);
  }

  private String fault(Fault fault) {
    String arm = fault.arm().isEmpty() ? "" : " --arm \"" + fault.arm() + "\"";
    String seat = fault.studied() < 0 ? "" : " --seat " + fault.studied();
    StudyGame game =
        StudyGame.of(
            study,
            fault.deal(),
            fault.arm().isEmpty() ? null : fault.arm(),
            fault.studied() < 0 ? null : fault.studied());
    return "the player \"%s\" at seat %d %s in deal %d%s; see it again with: tallywall game --study %s --deal %d%s%s"
        .formatted(
            game.players().get(fault.seat()).type().id(),
            fault.seat(),
            fault.illegal() ? "answered illegally" : "broke down",
            fault.deal(),
            fault.illegal() ? " (" + fault.what() + ")" : "",
            study.source().study(),
            fault.deal(),
            arm,
            seat);
  }

  private void write(RunFolder folder, Instant start) {
    Path target = folder.target();
    List<Table> tables = answer().all();
    try {
      for (Table table : tables) {
        CsvWriter.write(table, folder.file(table.stem() + ".csv"));
      }
    } catch (IOException e) {
      throw WholeFile.unwritten(target, e);
    }
    WholeFile.write(folder.file("columns.md"), ColumnsPage.text(tables));
    WholeFile.write(folder.file("study.json"), StudyJson.text(study, target));
    Manifest manifest = new Manifest(Version.text(), command, threads, start, Instant.now());
    WholeFile.write(
        folder.file("manifest.json"), manifest.text(study, tally.deals(), tally.games()));
  }

  private StudyAnswer answer() {
    return new StudyAnswer(study, setup.hands(), tally, stopping);
  }

  /** Prints the answer in words and short tables. */
  void summarise(Path target) {
    Summary summary = Summary.of(answer());
    for (String sentence : summary.sentences()) {
      Words.wrapped(sentence, "", console.width()).forEach(console::say);
      console.say("");
    }
    for (Table table : summary.tables()) {
      console.out().print(TextTable.text(table, console.width(), Lettering.UNICODE));
      console.say("");
    }
    console.say(
        "Everything is in "
            + target
            + "; open report.html there, or begin with notes.md; columns.md explains every column.");
  }
}
