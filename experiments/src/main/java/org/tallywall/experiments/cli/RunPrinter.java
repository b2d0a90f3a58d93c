package org.tallywall.experiments.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.tallywall.core.text.Shown;
import org.tallywall.experiments.guide.ReadyFiles;
import org.tallywall.experiments.night.DryRun;
import org.tallywall.experiments.night.RunListener;
import org.tallywall.experiments.night.RunOutcome;
import org.tallywall.experiments.night.StudyRunner;
import org.tallywall.experiments.paper.Papers;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.stats.EveryLook;
import org.tallywall.experiments.store.Checkpoint;
import org.tallywall.experiments.store.OnExisting;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.results.ResultNames;

/** Has a study played and prints how that goes and what comes out. */
final class RunPrinter implements RunListener {
  private final Console console;
  private final Study study;
  private final int threads;
  private final StudyRunner runner;
  private Consumer<Path> opened = folder -> {};
  private Consumer<Path> completed = folder -> {};
  private ProgressPrinter progress;
  private volatile boolean stopWanted;
  private volatile boolean papers;

  RunPrinter(Console console, Study study, int threads, List<String> command) {
    this(console, study, threads, System::nanoTime, command);
  }

  /** A run whose slow players are noticed by a clock of the caller's. */
  RunPrinter(Console console, Study study, int threads, LongSupplier clock, List<String> command) {
    this.console = console;
    this.study = study;
    this.threads = threads;
    this.runner = new StudyRunner(study, threads, clock, Version.text(), command);
    runner.tell(this);
  }

  /** Who is told when the results folder is ready and nothing has been played yet. */
  void whenOpened(Consumer<Path> listener) {
    opened = listener;
  }

  /** Who makes papers of the results, when they are complete; it writes report.html last. */
  void whenComplete(Consumer<Path> listener) {
    completed = listener;
  }

  /** Plays everything that has not been played before; returns the exit code. */
  int run(Path target, OnExisting onExisting) {
    console.interrupts().begins(new Stop());
    try {
      return print(target, runner.run(target, onExisting));
    } finally {
      console.interrupts().over();
    }
  }

  /** Whether the user wants the run to stop; papers that are being made are left then, too. */
  boolean stopWanted() {
    return stopWanted;
  }

  /** Says what a run would do; writes nothing and returns the exit code. */
  int tryOut(Path target, OnExisting onExisting) {
    Optional<DryRun.Measured> measured = runner.tryOut(target, onExisting);
    if (measured.isEmpty()) {
      wrapped("The run in " + target + " is complete; there is nothing left to play.");
    } else {
      new DryRunWords(study, measured.get()).sentences(target, threads).forEach(this::wrapped);
      runner
          .refusal(target, onExisting)
          .ifPresent(why -> wrapped("The run itself would be refused as it stands: " + why + "."));
    }
    return Program.DONE;
  }

  @Override
  public void opened(Path folder) {
    opened.accept(folder);
  }

  @Override
  public void remark(String sentence) {
    console.complain("tallywall: " + sentence);
  }

  @Override
  public void begins(RunState state) {
    progress = new ProgressPrinter(console, state, study.extent().until().isPresent());
  }

  @Override
  public void spoiled(Block block, Checkpoint.State what) {
    progress.say(
        "tallywall: block %s (deals %s to %s) %s and is played again"
            .formatted(
                block.number(),
                Words.grouped(block.firstDeal()),
                Words.grouped(block.firstDeal() + block.deals() - 1),
                what == Checkpoint.State.FOREIGN ? "belongs to another run" : "is damaged"));
  }

  @Override
  public void ends() {
    progress.end();
  }

  @Override
  public void complete(Path folder) {
    papers = true;
    completed.accept(folder);
  }

  /** What the user's wish to stop does to a run. */
  private final class Stop implements Interrupts.Work {
    @Override
    public void stop(int times) {
      stopWanted = true;
      if (papers) {
        console.complain("tallywall: stopping after this paper ...");
      } else if (times == 1) {
        runner.state().stop();
        console.complain(
            "tallywall: stopping when the blocks being played are finished; Ctrl-C again stops after"
                + " the deal being played and drops them ...");
      } else {
        runner.state().abandon();
        console.complain("tallywall: stopping after the deal being played ...");
      }
    }

    @Override
    public void exitIsCalled() {
      runner.state().exitIsCalled();
    }
  }

  private int print(Path target, RunOutcome outcome) {
    if (outcome.end() == RunOutcome.End.STOPPED) {
      return stopped(target, outcome.deals());
    }
    if (outcome.end() == RunOutcome.End.COMPLETE_BEFORE) {
      console.say("The run in " + target + " is complete; nothing was played.");
      console.say("");
    }
    String notes = Papers.forConsole(target, Version.text(), console.width());
    console.out().print(console.called().in(notes));
    console.say("");
    wrapped(
        "Everything is in "
            + target
            + (Files.exists(target.resolve(ResultNames.REPORT))
                ? "; open report.html there, or begin with notes.md;"
                : ";")
            + " columns.md explains every column.");
    wrapped(next(target));
    return Program.DONE;
  }

  /** What somebody may want to do with an answer. */
  private String next(Path target) {
    return (Files.isDirectory(target.resolve(ResultNames.GAMES))
            ? "Next: follow its games tile by tile in " + target.resolve(ResultNames.GAMES) + "; "
            : "Next: ")
        + (onReadyCard()
            ? "ask the same on your own card with --card my-card.json --out results/on-my-card; "
            : "")
        + "find more questions with: tallywall study list";
  }

  /** Whether the study was played on a card that came with the program. */
  private boolean onReadyCard() {
    return study.source().givenCard().isEmpty()
        && ReadyFiles.find().filter(ready -> ready.holdsCard(study.source().card())).isPresent();
  }

  private int stopped(Path target, long done) {
    String far =
        "tallywall: stopped after "
            + Words.grouped(done)
            + " of "
            + Words.count(study.extent().deals(), "deal", "deals");
    console.complain(
        done == 0
            ? far + "; no block of deals was finished, so none is kept"
            : far + "; they are kept in " + target + look(target, done) + "; " + runner.goOn());
    return Program.STOPPED;
  }

  private static String look(Path target, long done) {
    return done < EveryLook.LEAST
        ? ""
        : "; see what they show so far with: tallywall report " + Words.typed(target.toString());
  }

  private void wrapped(String sentence) {
    Words.wrapped(Shown.text(sentence), "", console.width()).forEach(console::say);
  }
}
