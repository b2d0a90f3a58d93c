package org.tallywall.experiments.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.tallywall.core.text.Nearest;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.night.EarlyLook;
import org.tallywall.experiments.paper.PaperFormat;
import org.tallywall.experiments.paper.PaperOptions;
import org.tallywall.experiments.paper.Papers;
import org.tallywall.experiments.paper.TeachingPack;
import org.tallywall.experiments.store.Manifest;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.results.ResultNames;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.jar.JarShelf;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes papers of results. */
@Command(
    name = "report",
    description = {
      "Makes notes, charts, a report page and pages of single games from a results folder.",
      "Of a run that is going on or was stopped: provisional ones, in its folder provisional, from",
      "1,000 deals on. With several folders: one page with all of them, to hand out."
    },
    footer = {
      "  tallywall report results/first-look",
      "  tallywall report results/first-look results/defense-switch --out evening.html"
    })
final class ReportCommand implements Callable<Integer> {
  private static final Path PACK = Path.of("teaching-pack.html");

  private final Console console;

  @Parameters(paramLabel = "FOLDER", arity = "1..*", description = "Results folders.")
  private List<Path> folders;

  @Option(
      names = "--format",
      paramLabel = "KINDS",
      description =
          "What to make, with commas between: notes, page, charts, games; all unless given.")
  private String formats;

  @Option(
      names = "--with-card",
      description =
          "Prints the lines of the card too; a card belongs to its publisher, so keep such a page.")
  private boolean withCard;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "The page of several folders; teaching-pack.html unless given.")
  private Path out;

  @Mixin private Trust trust;

  private volatile boolean stopWanted;

  ReportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    folders = folders.stream().map(ReportCommand::folder).toList();
    if (folders.size() > 1) {
      return pack();
    }
    if (out != null) {
      throw new WrongInputException(
          "--out is for a page of several folders; the papers of one folder stay in it");
    }
    Path folder = folders.get(0);
    PaperOptions options =
        new PaperOptions(formats(), withCard, Version.text())
            .trusting(trust.trusted())
            .until(() -> stopWanted);
    console.interrupts().begins(times -> stopWanted = true);
    Optional<Manifest> unfinished =
        Manifest.read(folder).filter(manifest -> manifest.state() != Manifest.State.COMPLETE);
    return unfinished.isPresent() && Files.isRegularFile(folder.resolve(ResultNames.STUDY))
        ? early(folder, unfinished.get(), options)
        : papers(folder, options);
  }

  /** Papers of a run that goes on or was stopped: it stays as it is, and they say what they are. */
  private Integer early(Path folder, Manifest manifest, PaperOptions options) {
    Catalog catalog = Catalog.standard().with(new JarShelf(trust.played(manifest.jars())));
    Study study = StudyFile.read(folder.resolve(ResultNames.STUDY), Changes.NONE, catalog);
    EarlyLook.Written written = EarlyLook.write(folder, manifest, study, Version.text());
    written.kept().forEach(remark -> console.complain("tallywall: " + remark));
    papers(written.folder(), options);
    console.say(
        "PROVISIONAL: %s of %s%s; the run itself is as it was, and goes on as before"
            .formatted(
                Words.grouped(written.deals()),
                study.extent().until().isPresent() ? "at most " : "",
                Words.count(study.extent().deals(), "deal", "deals")));
    return Program.DONE;
  }

  private Integer papers(Path folder, PaperOptions options) {
    Set<PaperFormat> wanted = options.formats();
    Papers.write(folder, options).forEach(remark -> console.complain("tallywall: " + remark));
    List<String> made =
        wanted.stream().sorted().map(this::files).filter(files -> isThere(folder, files)).toList();
    console.say(
        made.isEmpty()
            ? "Nothing was made in " + folder + ": the run kept no games (\"records\" in its study)"
            : "Made in %s: %s".formatted(folder, String.join(", ", made)));
    return Program.DONE;
  }

  /** The folder in which a paper or table lies stands for the results that it was made of. */
  private static Path folder(Path named) {
    Path parent = named.getParent() == null ? Path.of(".") : named.getParent();
    boolean inside =
        Files.isRegularFile(named) && Files.isRegularFile(parent.resolve(ResultNames.MANIFEST));
    return inside ? parent : named;
  }

  /** A run that kept no games has none to be shown. */
  private static boolean isThere(Path folder, String files) {
    return Files.exists(folder.resolve(files.split(",")[0]));
  }

  private String files(PaperFormat format) {
    return switch (format) {
      case NOTES -> ResultNames.NOTES + ", " + ResultNames.NOTES_PAGE;
      case PAGE -> ResultNames.REPORT;
      case CHARTS -> ResultNames.CHARTS;
      case GAMES -> ResultNames.GAMES;
    };
  }

  private Integer pack() {
    if (formats != null || withCard) {
      throw new WrongInputException(
          "a page of several folders has one form; leave out --format and --with-card");
    }
    Path file = out == null ? PACK : out;
    TeachingPack.write(folders, file, Version.text());
    console.say("Made of " + folders.size() + " studies: " + file);
    return Program.DONE;
  }

  private Set<PaperFormat> formats() {
    if (formats == null) {
      return EnumSet.allOf(PaperFormat.class);
    }
    EnumSet<PaperFormat> wanted = EnumSet.noneOf(PaperFormat.class);
    for (String name : Arrays.stream(formats.split(",", -1)).map(String::strip).toList()) {
      wanted.add(
          PaperFormat.of(name)
              .orElseThrow(
                  () ->
                      new WrongInputException(
                          "--format is one or more of %s with commas between, not \"%s\"%s"
                              .formatted(
                                  String.join(", ", PaperFormat.names()),
                                  name,
                                  Nearest.hint(name, PaperFormat.names())))));
    }
    return wanted;
  }
}
