package org.tallywall.strategies.setting;

import java.util.List;
import java.util.stream.Stream;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.Family;
import org.tallywall.core.card.Line;

/** A part of a card that a player's setting can name. */
enum CardPart {
  /** A section of the card. */
  FAMILY("family", "a family of the card") {
    @Override
    List<String> names(Card card) {
      return card.families().stream().map(Family::name).toList();
    }
  },
  /** A line, by its id or its nickname. */
  LINE("line", "a line of the card, by id or nickname") {
    @Override
    List<String> names(Card card) {
      Stream<String> ids = card.lines().stream().map(Line::id);
      Stream<String> nicknames = card.lines().stream().map(Line::say);
      return Stream.concat(ids, nicknames).filter(name -> !name.isEmpty()).toList();
    }
  };

  private final String word;
  private final String meaning;

  CardPart(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  /** The names that a setting may use. */
  abstract List<String> names(Card card);

  /** What it is called. */
  String word() {
    return word;
  }

  /** What it is, in words. */
  String meaning() {
    return meaning;
  }
}
