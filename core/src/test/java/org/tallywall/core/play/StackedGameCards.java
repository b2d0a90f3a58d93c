package org.tallywall.core.play;

import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;

/** Cards for games set up by hand. */
final class StackedGameCards {
  private StackedGameCards() {}

  /** A card of these lines, A1, A2 and so on, worth 25 each. */
  static Card lines(String... hands) {
    StringBuilder lines = new StringBuilder();
    for (String tiles : hands) {
      lines.append(lines.isEmpty() ? "" : ", ");
      lines.append("{\"tiles\": \"").append(tiles).append("\", \"value\": 25}");
    }
    return CardFile.json(
            "some.json",
            "{\"card\": \"Some\", \"families\": [{\"family\": \"A\", \"lines\": [" + lines + "]}]}")
        .orThrow();
  }
}
