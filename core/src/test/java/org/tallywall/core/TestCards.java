package org.tallywall.core;

import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;

/** Cards that several tests share. */
public final class TestCards {
  private static final String TEST_CARD =
      """
      {
        "card": "Test card",
        "edition": "suits fixed",
        "families": [
          { "family": "T", "lines": [
            { "id": "T1", "tiles": "111b 4444c NNNN RRR", "value": 25 },
            { "id": "T2", "tiles": "FF 7777d 7777b GGGG", "value": 30 },
            { "id": "T3", "tiles": "FF 222b 555c 888d WWW", "value": 40, "concealed": true },
            { "id": "T4", "tiles": "11d 33d 44c 66c 88b 99b EE", "value": 50, "concealed": true },
            { "id": "T5", "tiles": "22222d 66666d SSSS", "value": 35 },
            { "id": "T6", "tiles": "NEWS 2222c 99d 6666b", "value": 25 },
            { "id": "T7", "tiles": "FFFFF 3333c 33c 000", "value": 45 },
            { "id": "T8", "tiles": "111b 4444c NNNN RRR", "value": 20 }
          ] }
        ]
      }
      """;

  private TestCards() {}

  /**
   * The card of the worked rules cases: eight lines T1 to T8 of one concrete hand each. T3 and T4
   * are concealed; T8 asks for the tiles of T1 at a lower value.
   */
  public static Card testCard() {
    return CardFile.json("test-card.json", TEST_CARD).orThrow();
  }

  /** The text from which {@link #testCard()} is read. */
  public static String testCardText() {
    return TEST_CARD;
  }
}
