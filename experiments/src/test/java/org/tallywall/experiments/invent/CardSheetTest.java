package org.tallywall.experiments.invent;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.CardReading;
import org.tallywall.core.card.Line;

/** A card written as a sheet is the same card when it is read again. */
class CardSheetTest {
  private static Card again(Card card) {
    CardReading reading = CardFile.csv("again.csv", card.name(), CardSheet.text(card));
    assertThat(reading.faults()).isEmpty();
    return reading.card();
  }

  /** Of a card without an edition every field is on the sheet, so the digest is the same. */
  @Test
  void lineWithEveryField_isTheSameAgain() {
    Card card =
        CardFile.json(
                "c.json",
                """
                { "card": "Slipway", "families": [ { "family": "Tens, and more", "lines": [
                  { "tiles": "FFFF nnnx mmmy 10z 10z", "where": "nm: 19 28", "suits": "or one",
                    "value": 35, "concealed": true, "jokers": false, "jokerless": false,
                    "say": "the \\"scales\\", old" },
                  { "id": "Q", "tiles": ["FF 1111x 22y 3333z 99x", "(NNNN|SSSS) 1111b 2222c FF"],
                    "slide": "any", "value": 30 },
                  { "tiles": "11b 33b 55b 77b 99b NN SS", "jokerless": true, "value": 50 } ] } ] }
                """)
            .orThrow();
    assertThat(again(card).digest()).isEqualTo(card.digest());
  }

  @ParameterizedTest
  @CsvSource({"4, 13", "7, 54", "11, 70"})
  void drawnCard_isTheSameAgain(long seed, int lines) {
    Card card = new CardInventor(seed, lines).draw("Slipway").card();
    Card again = again(card);
    assertThat(again.families()).isEqualTo(card.families());
    assertThat(again.lines()).extracting(Line::say).doesNotContain("");
  }
}
