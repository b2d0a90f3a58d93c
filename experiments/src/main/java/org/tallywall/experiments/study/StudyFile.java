package org.tallywall.experiments.study;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.CardReading;
import org.tallywall.core.card.Line;
import org.tallywall.core.rules.RulesReader;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.Fault;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.TextFile;
import org.tallywall.strategies.catalog.Catalog;

/** Reads study files: JSON with comments, strict, all faults of a file at once. */
public final class StudyFile {
  private static final List<String> KNOWN =
      List.of(
          "study",
          "question",
          "card",
          "rules",
          "seed",
          "arms",
          "baseline",
          "others",
          "table",
          "round-robin",
          "sweep",
          "branch",
          "seats",
          "primary",
          "secondary",
          "deals",
          "until",
          "confidence",
          "records",
          "faults-borne",
          "decision-seconds",
          "streams");

  private final Path file;
  private final Changes changes;
  private final Faults faults = new Faults();
  private final FieldReader fields;
  private final DesignReader designs;

  private StudyFile(Path file, Changes changes, Catalog catalog, Node root) {
    this.file = file;
    this.changes = changes;
    this.fields = new FieldReader(root, "a study", this.faults, KNOWN);
    this.designs = new DesignReader(fields, this.faults, catalog.in(file.resolveSibling("")));
  }

  /**
   * Reads a study.
   *
   * @param file the file
   * @param changes what to put in place of what the study says
   * @param catalog the players that it can name beside those in jars
   * @return the study
   * @throws FaultyFileException with all faults of the study, or of the card or rules file
   */
  public static Study read(Path file, Changes changes, Catalog catalog) {
    Faults unreadable = new Faults();
    Node root = LocatedJson.read(TextFile.read(file), unreadable);
    if (root == null) {
      throw new FaultyFileException(file.toString(), unreadable.faults());
    }
    return new StudyFile(file, changes, catalog, root).study();
  }

  private Study study() {
    Question question = new QuestionReader(fields).read();
    TableRules written = RulesReader.read(fields.node("rules"), faults);
    Design design = designs.read();
    Extent extent = extent(question.primary(), design);
    CardReading card = card();
    if (faults.any()) {
      throw new FaultyFileException(file.toString(), faults.faults());
    }
    Card good = card.orThrow();
    checkLine(design, good);
    TableRules rules = changes.rules().map(RulesFile::read).orElse(written);
    Source source = new Source(file, cardFile(), changes.card(), changes.rules());
    return new Study(question, good, rules, design, extent, source);
  }

  private void checkLine(Design design, Card card) {
    if (design instanceof Design.Branch branch && branch.line().isPresent()) {
      List<String> ids = card.lines().stream().map(Line::id).toList();
      String id = branch.line().get();
      if (!ids.contains(id)) {
        fields.fault(
            "branch",
            "the card has no line \"%s\"; the nearest is \"%s\""
                .formatted(id, Nearest.of(id, ids)));
        throw new FaultyFileException(file.toString(), faults.faults());
      }
    }
  }

  private Extent extent(Optional<Measure> primary, Design design) {
    fields.require("seed", "any whole number, as in \"seed\": 20261125");
    long seed = changes.seed().orElse(fields.whole("seed", 0, 0, Long.MAX_VALUE));
    Optional<Until> until = fields.has("until") ? until(primary, design) : Optional.empty();
    if (!fields.has("until")) {
      fields.require("deals", "how many deals to play, as in \"deals\": 20000");
    } else if (fields.has("deals")) {
      fields.fault("deals", "a study has either \"deals\" or \"until\"; take one out");
    }
    long written = fields.whole("deals", 1, 1, Extent.MOST_DEALS);
    long records = fields.whole("records", 0, 0, Extent.MOST_DEALS);
    long deals = changes.deals().orElse(until.map(Until::atMost).orElse(written));
    if (design instanceof Design.RoundRobin everyone) {
      long round = RoundRobinTables.round(everyone.players().size());
      long whole = (deals + round - 1) / round * round;
      return new Extent(seed, whole, records, RoundRobinTables.BLOCK, until, patience());
    }
    if (until.isPresent() && until.get().expected().isEmpty() && deals <= Extent.BLOCK) {
      fields.fault(
          "until",
          "the first %s deals only tell what to expect and are left out; allow more deals, or say what to expect (\"expected-discordance\" or \"expected-sd\")"
              .formatted(Extent.BLOCK));
    }
    return new Extent(seed, deals, records, Extent.BLOCK, until, patience());
  }

  private Patience patience() {
    Patience usual = Patience.USUAL;
    return new Patience(
        fields.whole("faults-borne", usual.faultsBorne(), 0, Extent.MOST_DEALS),
        fields.whole("decision-seconds", usual.decisionSeconds(), 1, Patience.MOST_SECONDS));
  }

  private Optional<Until> until(Optional<Measure> primary, Design design) {
    if (design != null && !(design instanceof Design.Arms) && !(design instanceof Design.Sweep)) {
      fields.fault("until", "\"until\" goes with \"arms\" and \"sweep\"; write \"deals\" instead");
      return Optional.empty();
    }
    return Optional.of(new UntilReader(fields.node("until"), faults, primary).read());
  }

  private CardReading card() {
    boolean named = fields.require("card", "the path of the card file, relative to this file");
    Path path = changes.card().isPresent() || named ? cardFile() : null;
    if (path == null) {
      return null;
    }
    CardReading reading = CardFile.read(path);
    Optional<Fault> unreadable =
        reading.faults().stream().filter(fault -> fault.line() == 0).findFirst();
    if (changes.card().isEmpty() && unreadable.isPresent()) {
      fields.fault("card", "the card \"" + path + "\": " + unreadable.get().message());
    }
    return reading;
  }

  /** The card file; null where the study's is no path. */
  private Path cardFile() {
    if (changes.card().isPresent()) {
      return changes.card().get();
    }
    String text = fields.text("card", "");
    try {
      return text.isBlank() ? null : file.resolveSibling(text);
    } catch (InvalidPathException impossible) {
      fields.fault("card", "\"" + text + "\" cannot be the name of a file");
      return null;
    }
  }
}
