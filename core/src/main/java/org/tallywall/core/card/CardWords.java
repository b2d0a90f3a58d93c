package org.tallywall.core.card;

import java.util.Map;

/** Other names that people give to the fields and columns of a card. */
final class CardWords {
  /** Of a family in JSON. */
  static final Map<String, String> FAMILY = Map.of("section", "family");

  /** Of a line in JSON. */
  static final Map<String, String> LINE =
      Map.of("hand", "tiles", "points", "value", "note", "say", "nickname", "say");

  /** Of the columns of a spreadsheet. */
  static final Map<String, String> COLUMNS =
      Map.of(
          "section",
          "family",
          "hand",
          "tiles",
          "points",
          "value",
          "note",
          "say",
          "nickname",
          "say",
          "title",
          "card",
          "x/c",
          "concealed",
          "c/x",
          "concealed");

  private CardWords() {}
}
