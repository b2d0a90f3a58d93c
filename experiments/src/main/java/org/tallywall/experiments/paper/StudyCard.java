package org.tallywall.experiments.paper;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.CardReading;
import org.tallywall.reports.results.Results;

/** The card on which results were played, where its file is still there and still the same. */
final class StudyCard {
  private final Optional<Card> card;
  private final String trouble;

  private StudyCard(Card card, String trouble) {
    this.card = Optional.ofNullable(card);
    this.trouble = trouble;
  }

  /** Looks for the card beside the study. */
  static StudyCard of(Results results) {
    String file = results.study().text("card");
    Path path;
    try {
      path = results.folder().resolve(file);
    } catch (InvalidPathException wrong) {
      return new StudyCard(null, "study.json names no card file that could be read");
    }
    if (file.isEmpty() || !Files.isRegularFile(path)) {
      return new StudyCard(
          null, "the card file \"" + path.normalize() + "\" is not there any more");
    }
    CardReading reading = CardFile.read(path);
    if (reading.card() == null) {
      return new StudyCard(null, "the card file \"" + path.normalize() + "\" has faults now");
    }
    if (!reading.card().digest().equals(results.manifest().text("card-digest"))) {
      return new StudyCard(
          null,
          "the card file \""
              + path.normalize()
              + "\" is not the one that was played; it has changed");
    }
    return new StudyCard(reading.card(), "");
  }

  /** The card, if it could be had. */
  Optional<Card> card() {
    return card;
  }

  /** Why there is no card; empty if there is one. */
  String trouble() {
    return trouble;
  }

  /** The hands of each line as they are typed, by the line's id. */
  Map<String, String> lines() {
    Map<String, String> lines = new HashMap<>();
    card.ifPresent(
        one ->
            one.lines()
                .forEach(
                    line -> lines.put(line.id(), String.join(" or ", line.printed().tiles()))));
    return lines;
  }
}
