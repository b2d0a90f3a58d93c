package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.text.Nearest;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.guide.ReadyFiles;
import org.tallywall.experiments.guide.SectionsStudy;
import org.tallywall.experiments.guide.StudySkeleton;
import org.tallywall.experiments.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a study to fill in. */
@Command(
    name = "new",
    description = {
      "Writes a study to fill in, with a comment on every line. It runs as it stands.",
      "Without KIND: lists the kinds of studies and what each of them asks."
    },
    footer = {
      "Examples:",
      "  tallywall study new",
      "  tallywall study new arms --out my-study.json",
      "  tallywall study new sections --card my-card.json --out my-sections.json"
    })
final class StudyNewCommand implements Callable<Integer> {
  private static final String NAME = "my-study";
  private static final String ENDING = ".json";

  private final Console console;

  @Parameters(
      arity = "0..1",
      paramLabel = "KIND",
      description = "table, arms, sections, sweep, branch or round-robin.")
  private String kind;

  @Option(
      names = "--card",
      paramLabel = "FILE",
      description = "The card to play on; the practice card of the demo unless given.")
  private Path card;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Writes the study to a new file instead of the screen, and names it after it.")
  private Path out;

  StudyNewCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (kind == null) {
      list();
      return Program.DONE;
    }
    String text = text();
    if (out == null) {
      console.out().print(text);
    } else {
      NewFile.write(out, text, console);
      console.say("Next: edit it, then tallywall run " + Words.typed(out.toString()));
    }
    return Program.DONE;
  }

  private void list() {
    for (StudySkeleton skeleton : StudySkeleton.values()) {
      listed(skeleton.kind(), skeleton.asks());
    }
    listed(SectionsStudy.KIND, SectionsStudy.ASKS);
    console.say("");
    console.say("tallywall study new KIND --out FILE writes one to fill in.");
  }

  private void listed(String one, String asks) {
    console.say(one);
    Words.wrapped(asks, "    ", console.width()).forEach(console::say);
  }

  private String text() {
    if (kind.equals(SectionsStudy.KIND)) {
      Path path = cardFile();
      return SectionsStudy.text(name(), shown(path), CardFile.read(path).orThrow());
    }
    StudySkeleton skeleton = skeleton();
    Path path = cardFile();
    if (card != null) {
      CardFile.read(card).orThrow();
    }
    return skeleton.text(name(), shown(path));
  }

  private StudySkeleton skeleton() {
    List<String> kinds =
        new ArrayList<>(Arrays.stream(StudySkeleton.values()).map(StudySkeleton::kind).toList());
    int at = kinds.indexOf(kind);
    if (at < 0) {
      kinds.add(SectionsStudy.KIND);
      throw new WrongInputException(
          "there is no kind of study %s%s (kinds: %s)"
              .formatted(Words.quoted(kind), Nearest.hint(kind, kinds), String.join(", ", kinds)));
    }
    return StudySkeleton.values()[at];
  }

  /** The name of the file where a study may be called that. */
  private String name() {
    String file = out == null || out.getFileName() == null ? "" : out.getFileName().toString();
    String name = file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : "";
    return name.matches("[a-z][a-z0-9-]{4,79}") ? name : NAME;
  }

  /** The card to play on, which is a good one. */
  private Path cardFile() {
    if (card == null) {
      return demoCard();
    }
    MixedUp.wantsCard(card);
    return card;
  }

  /** The path of the card, seen from the study. */
  private String shown(Path path) {
    return seen(path).toString().replace(path.getFileSystem().getSeparator(), "/");
  }

  /** A path that is not absolute is one from the study's folder, if there is a way from there. */
  private Path seen(Path path) {
    if (path.isAbsolute() || out == null) {
      return path;
    }
    Path from = out.toAbsolutePath().normalize().getParent();
    Path to = path.toAbsolutePath().normalize();
    boolean way = from != null && from.getRoot().equals(to.getRoot());
    return way ? from.relativize(to) : to;
  }

  private static Path demoCard() {
    return ReadyFiles.find()
        .map(ReadyFiles::demoCard)
        .orElseThrow(() -> new WrongInputException("name your card, as in --card my-card.json"));
  }
}
