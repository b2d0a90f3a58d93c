package org.tallywall.core.play;

import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;

/** Cards for games set up by hand. */
final class StackedGameCards {
  private StackedGameCards() {}

  /** A card of a single line, worth 25. */
  static Card oneLine(String tiles) {
    return CardFile.json(
            "one.json",
            """
            {"card": "One line", "families": [{"family": "A", "lines": [
              {"id": "A1", "tiles": "%s", "value": 25}]}]}
            """
                .formatted(tiles))
        .orThrow();
  }
}
