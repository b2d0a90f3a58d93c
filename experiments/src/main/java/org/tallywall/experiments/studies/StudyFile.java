package org.tallywall.experiments.studies;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.CardReading;
import org.tallywall.core.rules.RulesReader;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.Fault;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.OldWords;
import org.tallywall.core.text.TextFile;
import org.tallywall.experiments.design.DesignKind;
import org.tallywall.experiments.design.DesignReader;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.stats.EveryLook;
import org.tallywall.experiments.study.Bounds;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Extent;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Patience;
import org.tallywall.experiments.study.QuestionReader;
import org.tallywall.experiments.study.RulesFile;
import org.tallywall.experiments.study.Source;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.experiments.study.StudyQuestion;
import org.tallywall.experiments.study.Until;
import org.tallywall.experiments.study.UntilReader;
import org.tallywall.experiments.words.Words;
import org.tallywall.strategies.catalog.Catalog;

/** Reads study files: JSON with comments, strict, all faults of a file at once. */
public final class StudyFile {
  private static final List<String> WHATEVER_THE_DESIGN =
      List.of(
          "study",
          "question",
          "card",
          "rules",
          "seed",
          "primary",
          "secondary",
          "deals",
          StudyJson.FIRST_PLANNED,
          "until",
          "confidence",
          "records",
          "failed-deals-allowed",
          "decision-seconds");

  private final Path file;
  private final Changes changes;
  private final Faults faults;
  private final FieldReader fields;
  private final DesignReader designs;

  private StudyFile(Path file, Changes changes, Catalog catalog, Node root, Faults faults) {
    this.file = file;
    this.faults = faults;
    this.changes = changes;
    this.fields = new FieldReader(root, "a study", this.faults, known());
    this.designs =
        new DesignReader(Designs.ALL, fields, this.faults, catalog.in(file.resolveSibling("")));
  }

  private static List<String> known() {
    List<String> known = new ArrayList<>(WHATEVER_THE_DESIGN);
    Designs.ALL.forEach(kind -> known.add(kind.name()));
    known.addAll(DesignReader.fieldsOf(Designs.ALL));
    return known;
  }

  /**
   * Reads a study.
   *
   * @param file the file
   * @param changes what to put in place of what the study says
   * @param catalog the players that it can name beside those in jars
   * @return the study
   * @throws FaultyFileException with all faults of the study, or of the card or rules file
   * @throws WrongInputException if it may stop early and the number of deals given is too small
   */
  public static Study read(Path file, Changes changes, Catalog catalog) {
    return read(file, changes, catalog, warning -> {});
  }

  /**
   * Reads a study and hands over what looks odd in it.
   *
   * @param file the file
   * @param changes what to put in place of what the study says
   * @param catalog the players that it can name beside those in jars
   * @param warnings takes what is understood but written otherwise today
   * @return the study
   * @throws FaultyFileException with all faults of the study, or of the card or rules file
   * @throws WrongInputException if it may stop early and the number of deals given is too small
   */
  public static Study read(Path file, Changes changes, Catalog catalog, Consumer<Fault> warnings) {
    Faults faults = new Faults();
    Node root = LocatedJson.read(TextFile.read(file), faults);
    if (root == null) {
      throw new FaultyFileException(file.toString(), faults.faults());
    }
    Node today = OldWords.renewed(root, faults);
    Study study = new StudyFile(file, changes, catalog, today, faults).study();
    faults.warnings().forEach(warnings);
    return study;
  }

  /**
   * The designs that a study can have.
   *
   * @return the field of each that asks for it
   */
  public static List<String> designs() {
    return Designs.ALL.stream().map(DesignKind::name).toList();
  }

  private Study study() {
    StudyQuestion question = new QuestionReader(fields).read();
    TableRules written = RulesReader.read(fields.node("rules"), faults);
    Optional<DesignKind> kind = designs.kind();
    PlayedDesign design = kind.map(designs::read).orElse(null);
    boolean stops = design == null || kind.get().stopsEarly();
    Extent extent = extent(question.primary(), design, stops);
    CardReading card = card();
    if (faults.any()) {
      throw new FaultyFileException(file.toString(), faults.faults());
    }
    Card good = card.orThrow();
    unfit(design, good).forEach(fault -> fields.fault(kind.get().name(), fault));
    if (faults.any()) {
      throw new FaultyFileException(file.toString(), faults.faults());
    }
    TableRules rules = changes.rules().map(RulesFile::read).orElse(written);
    Source source = new Source(file, cardFile(), changes.card(), changes.rules());
    return new Study(question, good, rules, design, extent, source);
  }

  /** What keeps the design and its players from being played on a card, each said once. */
  private Set<String> unfit(PlayedDesign design, Card card) {
    Set<String> unfit = new LinkedHashSet<>(design.unfit(card).stream().toList());
    unfit.addAll(
        PreferredFamilies.unfit(design.seated(), card, cardFile(), changes.card().isPresent()));
    return unfit;
  }

  private Extent extent(Optional<Measure> primary, PlayedDesign design, boolean stops) {
    fields.require("seed", "any whole number, as in \"seed\": 20261125");
    long seed = changes.seed().orElse(fields.whole("seed", 0, 0, Long.MAX_VALUE));
    Optional<Until> until = fields.has("until") ? until(primary, stops) : Optional.empty();
    if (!fields.has("until")) {
      fields.require("deals", "how many deals to play, as in \"deals\": 20000");
    } else if (fields.has("deals")) {
      fields.fault("deals", "a study has either \"deals\" or \"until\"; take one out");
    }
    long written = fields.whole("deals", 1, 1, Extent.MOST_DEALS);
    long records = fields.whole("records", 0, 0, Extent.MOST_DEALS);
    long deals = changes.deals().orElse(until.map(Until::atMost).orElse(written));
    Optional<Long> planned = firstPlanned(deals);
    if (until.isPresent() && until.get().expected().isEmpty() && deals <= Extent.BLOCK) {
      tooFewGiven();
      fields.fault(
          "until",
          "the first %s deals only tell what to expect and are left out; allow more deals, or say what to expect (\"expected-discordance\" or \"expected-sd\")"
              .formatted(Extent.BLOCK));
    }
    return design == null
        ? new Extent(seed, deals, planned, records, Extent.BLOCK, until, patience())
        : new Extent(
            seed,
            design.deals(deals),
            planned.map(design::deals),
            records,
            design.blockSize(),
            until,
            patience());
  }

  /** A number that was typed behind the command is no fault of the study. */
  private void tooFewGiven() {
    if (changes.deals().isPresent()) {
      throw new WrongInputException(
          "--deals %s is too few: this study uses its first %s deals to learn what to expect, and counts those that follow. Write --deals %s or more."
              .formatted(changes.deals().get(), Extent.BLOCK, Extent.BLOCK + 1));
    }
  }

  /** The number of deals that was fixed before another took its place, where that was done. */
  private Optional<Long> firstPlanned(long deals) {
    if (!fields.has(StudyJson.FIRST_PLANNED)) {
      return Optional.empty();
    }
    if (fields.has("until")) {
      fields.fault(
          StudyJson.FIRST_PLANNED,
          "\"first-planned\" goes with \"deals\"; a study with \"until\" may stop anywhere anyway");
    } else if (deals < EveryLook.LEAST) {
      fields.fault(
          StudyJson.FIRST_PLANNED,
          "a number of deals that was changed afterwards is %s or more"
              .formatted(Words.grouped(EveryLook.LEAST)));
    }
    return Optional.of(fields.whole(StudyJson.FIRST_PLANNED, deals, 1, Extent.MOST_DEALS));
  }

  private Patience patience() {
    Patience usual = Patience.USUAL;
    return new Patience(
        fields.whole("failed-deals-allowed", usual.faultsBorne(), 0, Bounds.MOST_FAULTS),
        fields.whole("decision-seconds", usual.decisionSeconds(), 1, Patience.MOST_SECONDS));
  }

  private Optional<Until> until(Optional<Measure> primary, boolean stops) {
    if (!stops) {
      String those =
          Designs.ALL.stream()
              .filter(DesignKind::stopsEarly)
              .map(kind -> "\"" + kind.name() + "\"")
              .collect(Collectors.joining(" and "));
      fields.fault("until", "\"until\" goes with " + those + "; write \"deals\" instead");
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
    if (text.isBlank()) {
      if (fields.node("card").value() instanceof String) {
        fields.fault("card", "the name of the card file is empty; write its path");
      }
      return null;
    }
    try {
      return file.resolveSibling(text);
    } catch (InvalidPathException impossible) {
      fields.fault("card", "\"" + text + "\" cannot be the name of a file");
      return null;
    }
  }
}
