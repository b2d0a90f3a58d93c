package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Two typings of a card compared line by line. */
class CardDifferenceTest {
  private static final String NORTH =
      "{ \"id\": \"A\", \"tiles\": \"FF 1111b 2222c NNNN\", \"value\": 25 }";
  private static final String SOUTH =
      "{ \"id\": \"B\", \"tiles\": \"FF 1111b 2222c SSSS\", \"value\": 25 }";
  private static final String EAST =
      "{ \"id\": \"C\", \"tiles\": \"FF 1111b 2222c EEEE\", \"value\": 25 }";

  private static Card card(String... lines) {
    return CardTexts.read(lines).orThrow();
  }

  @Test
  void sameCard_typedInAnotherWay_hasNoDifference() {
    Card other =
        CardFile.csv(
                "c.csv",
                "Other name",
                "family,id,tiles,value,say\nX,B,2222c FF SSSS 1111b,25,nick\nY,A,FF 1111b 2222c NNNN,25,\n")
            .orThrow();
    assertThat(CardDifference.between(card(NORTH, SOUTH), other)).isEmpty();
  }

  @Test
  void lines_thatOnlyOneCardHas_areNamed() {
    assertThat(CardDifference.between(card(NORTH, SOUTH), card(NORTH)))
        .containsExactly(
            new CardDifference("B", "", java.util.List.of("only the first card has it")));
    assertThat(CardDifference.between(card(NORTH), card(SOUTH, NORTH, EAST)))
        .extracting(CardDifference::second)
        .containsExactly("B", "C");
  }

  @Test
  void lines_withOtherIds_areMatchedByTheirOrder() {
    Card renamed =
        card(NORTH.replace("\"A\"", "\"P\""), SOUTH.replace("\"B\"", "\"Q\"").replace("25", "30"));
    assertThat(CardDifference.between(card(NORTH, SOUTH), renamed))
        .containsExactly(
            new CardDifference(
                "B", "Q", java.util.List.of("value: 25 in the first, 30 in the second")));
  }

  @Test
  void line_thatDiffersInEverything_namesEachWithAnExample() {
    String changed =
        "{ \"id\": \"A\", \"tiles\": \"FF 1111b 2222c (EEEE|SSSS)\", \"value\": 30,"
            + " \"concealed\": true, \"jokers\": false, \"jokerless\": false }";
    assertThat(CardDifference.between(card(NORTH), card(changed)).get(0).what())
        .containsExactly(
            "hands: 1 only in the first, for example 1111b 2222c NNNN FF",
            "hands: 2 only in the second, for example 1111b 2222c EEEE FF",
            "value: 25 in the first, 30 in the second",
            "concealed: false in the first, true in the second",
            "jokers: true in the first, false in the second",
            "jokerless: true in the first, false in the second");
  }
}
