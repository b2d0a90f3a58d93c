package org.tallywall.experiments.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.answer.Summary;
import org.tallywall.experiments.answer.TableAnswer;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.run.LocalRun;
import org.tallywall.experiments.run.PlayerFaultException;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.run.TablePlayer;
import org.tallywall.experiments.store.Manifest;
import org.tallywall.experiments.store.RecordWriter;
import org.tallywall.experiments.store.RunFolder;
import org.tallywall.experiments.store.WholeFile;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.experiments.tally.TableTally;
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
  private final TableTally tally;

  StudyRunner(Console console, Study study, int threads, List<String> command) {
    this.console = console;
    this.study = study;
    this.threads = threads;
    this.command = command;
    this.setup = new TableSetup(new ConcreteHands(study.card()), study.rules());
    this.state = new RunState(study.extent().deals());
    this.tally = new TableTally(setup);
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
    Design.Table design = (Design.Table) study.design();
    LocalRun run = new LocalRun(() -> new TablePlayer(study, design, setup), state, threads);
    ProgressPrinter progress = new ProgressPrinter(console, state);
    try (RecordWriter records = records(folder)) {
      return run.play(
          result -> {
            tally.add(result.tally());
            if (records != null) {
              records.write(result.records());
            }
          });
    } catch (PlayerFaultException fault) {
      throw new FailedException(fault(design, fault), fault);
    } finally {
      progress.end();
    }
  }

  private RecordWriter records(RunFolder folder) {
    return study.extent().recorded() == 0
        ? null
        : new RecordWriter(folder.file("records.jsonl.gz"), true);
  }

  private String fault(Design.Table design, PlayerFaultException fault) {
    String player = design.players().get(fault.seat()).type().id();
    return "the player \"%s\" at seat %d %s in deal %d%s; see it again with: tallywall game --study %s --deal %d"
        .formatted(
            player,
            fault.seat(),
            fault.illegal() ? "answered illegally" : "broke down",
            fault.deal(),
            fault.illegal() ? " (" + fault.getMessage() + ")" : "",
            study.source().study(),
            fault.deal());
  }

  private void write(RunFolder folder, Instant start) {
    Path target = folder.target();
    TableAnswer answer = TableAnswer.of(study, setup.hands(), tally);
    try {
      for (Table table : answer.all()) {
        CsvWriter.write(table, folder.file(table.stem() + ".csv"));
      }
    } catch (IOException e) {
      throw WholeFile.unwritten(target, e);
    }
    WholeFile.write(folder.file("columns.md"), ColumnsPage.text(answer.all()));
    WholeFile.write(folder.file("study.json"), StudyJson.text(study, target));
    Manifest manifest = new Manifest(Version.text(), command, threads, start, Instant.now());
    WholeFile.write(
        folder.file("manifest.json"), manifest.text(study, tally.deals(), tally.deals()));
  }

  /** Prints the short tables. */
  void summarise(Path target) {
    Summary summary = new Summary(study, setup.hands(), tally);
    console.out().print(TextTable.text(summary.seats(), console.width(), Lettering.UNICODE));
    console.say("");
    console.out().print(TextTable.text(summary.lines(), console.width(), Lettering.UNICODE));
    console.say("");
    console.say("Everything is in " + target + "; columns.md there explains every column.");
  }
}
