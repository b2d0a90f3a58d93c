package org.tallywall.experiments.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tallywall.core.text.Nearest;
import org.tallywall.experiments.design.StudyPlayer;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.night.ChangedDeals;
import org.tallywall.experiments.paper.PaperOptions;
import org.tallywall.experiments.paper.Papers;
import org.tallywall.experiments.store.OnExisting;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Extent;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.words.Words;
import org.tallywall.strategies.jar.JarTrust;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plays a study. */
@Command(
    name = "run",
    description = "Plays a study and writes the results into a folder.",
    footer = {
      "Every block of deals is stored as soon as it is played. Ctrl-C, or a file named stop in the",
      "folder, ends the run after the blocks being played; whatever ended it, --on-existing resume",
      "goes on where it was. Exit codes: 0 done, 1 failed, 2 wrong input, 130 stopped."
    })
final class RunCommand implements Callable<Integer> {

  private final Console console;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "STUDY", description = "The study file.")
  private Path study;

  @Option(
      names = "--card",
      paramLabel = "FILE",
      description = "Plays the study on this card instead of its own.")
  private Path card;

  @Option(
      names = "--rules",
      paramLabel = "FILE",
      description = "Plays by the table rules in this file instead of the study's own.")
  private Path rules;

  @Option(
      names = "--deals",
      paramLabel = "NUMBER",
      description =
          "How many deals to play. With --on-existing resume, the number after which a run that has"
              + " begun is to end: sooner or later than planned, with ranges that allow for it.")
  private Long deals;

  @Option(names = "--seed", paramLabel = "NUMBER", description = "Uses this seed.")
  private Long seed;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where the results go; results/NAME unless given.")
  private Path out;

  @Option(
      names = "--on-existing",
      paramLabel = "WHAT",
      completionCandidates = Candidates.OfExisting.class,
      description =
          "What to do with results that are there already: fail (usual), resume or overwrite.")
  private String onExisting = "fail";

  @Option(
      names = "--dry-run",
      description = "Says what would be done and how long it would take; writes nothing.")
  private boolean dryRun;

  @Option(
      names = "--threads",
      paramLabel = "NUMBER",
      description =
          "How many threads play; all processors unless given. The results do not change.")
  private Integer threads;

  @Option(
      names = "--without-report",
      description = "Makes no notes, charts and pages; tallywall report makes them later.")
  private boolean withoutReport;

  @Mixin private Roster roster;

  RunCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    int workers = Threads.of(threads);
    if (deals != null && (deals < 1 || deals > Extent.MOST_DEALS)) {
      throw new WrongInputException(
          "--deals is 1 to " + Words.grouped(Extent.MOST_DEALS) + ", not " + Words.grouped(deals));
    }
    OnExisting policy = policy();
    MixedUp.wantsStudy(study);
    Changes changes =
        new Changes(
            Optional.ofNullable(card),
            Optional.ofNullable(rules),
            Optional.ofNullable(seed),
            Optional.ofNullable(deals));
    Study asked =
        StudyFile.read(
            study,
            changes,
            roster.catalog(JarTrust.ALL),
            odd -> console.complain("warning: " + odd.text(study.toString())));
    StudyPlayer.check(asked);
    Path target = out == null ? Path.of("results", asked.question().name()) : place(out);
    boolean goesOn = policy == OnExisting.RESUME && deals != null;
    Study read = goesOn ? ChangedDeals.of(asked, target) : asked;
    RunPrinter runner = new RunPrinter(console, read, workers, command());
    if (!withoutReport) {
      runner.whenComplete(folder -> report(folder, runner));
    }
    return dryRun ? runner.tryOut(target, policy) : runner.run(target, policy);
  }

  /** Papers of a run that she started herself: its jars are those that have just played. */
  private void report(Path target, RunPrinter runner) {
    PaperOptions options =
        PaperOptions.everything(Version.text()).trusting(true).until(runner::stopWanted);
    try {
      Papers.write(target, options).forEach(remark -> console.complain("tallywall: " + remark));
    } catch (FailedException unwritten) {
      throw new FailedException(
          unwritten.getMessage()
              + ". All the numbers are there; to make the papers: tallywall report "
              + Words.typed(target.toString()),
          unwritten);
    }
  }

  /** A folder named by a way through one that is not there is where the names alone lead. */
  private static Path place(Path named) {
    return Files.exists(named) ? named : named.normalize();
  }

  private OnExisting policy() {
    List<String> names = OnExisting.names();
    int at = names.indexOf(onExisting);
    if (at < 0) {
      throw new WrongInputException(
          "--on-existing is fail, resume or overwrite, not \"%s\"%s"
              .formatted(onExisting, Nearest.hint(onExisting, names)));
    }
    return OnExisting.values()[at];
  }

  private List<String> command() {
    List<String> words = new ArrayList<>();
    words.add("tallywall");
    words.addAll(spec.root().commandLine().getParseResult().originalArgs());
    return words;
  }
}
