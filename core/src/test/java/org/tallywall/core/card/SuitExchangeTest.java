package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tallywall.core.TestCards;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;

/** Exchanging suits moves each suit with its dragon, in tiles and on the card. */
class SuitExchangeTest {
  private static String hands(SuitExchange suits, String tiles) {
    Card card =
        CardFile.json(
                "one.json",
                "{\"card\":\"One\",\"families\":[{\"family\":\"A\",\"lines\":[{\"tiles\":\""
                    + tiles
                    + "\",\"value\":25}]}]}")
            .orThrow();
    return suits.card(card).lines().get(0).hands().toString();
  }

  @Test
  void all_areTheSixOrdersOfThreeSuits() {
    Set<List<Integer>> orders = new HashSet<>();
    for (SuitExchange suits : SuitExchange.ALL) {
      orders.add(
          List.of(
              Tile.suitOf(suits.kind(0)), Tile.suitOf(suits.kind(9)), Tile.suitOf(suits.kind(18))));
    }

    assertThat(orders).hasSize(6);
    assertThat(SuitExchange.ALL.get(0)).hasToString("as written");
  }

  @Test
  void kind_takesTheDragonAlong() {
    for (SuitExchange suits : SuitExchange.ALL) {
      for (int suit = 0; suit < 3; suit++) {
        int moved = Tile.suitOf(suits.kind(Tile.suited(suit, 5)));
        assertThat(suits.kind(Tile.suited(suit, 5))).isEqualTo(Tile.suited(moved, 5));
        assertThat(suits.kind(Tile.dragonOf(suit))).isEqualTo(Tile.dragonOf(moved));
      }
      for (int kind : TileText.rack("NEWSFJ").tiles()) {
        assertThat(suits.kind(kind)).isEqualTo(kind);
      }
    }
  }

  @Test
  void card_withNamedSuitsAndDragons_isExchanged() {
    SuitExchange bamsAndCraks =
        SuitExchange.ALL.stream()
            .filter(suits -> suits.toString().equals("bams to craks, craks to bams"))
            .findFirst()
            .orElseThrow();

    assertThat(hands(bamsAndCraks, "111b 4444c NNNN RRR")).isEqualTo("[4444b NNNN 111c GGG]");
    assertThat(hands(bamsAndCraks, "222d 000 5555d DDDDb")).contains("RRRR");
  }

  @Test
  void card_withoutNamedSuits_staysAsItIs() {
    for (SuitExchange suits : SuitExchange.ALL) {
      assertThat(hands(suits, "1111x 22y 333x 444z 55y"))
          .isEqualTo(hands(SuitExchange.ALL.get(0), "1111x 22y 333x 444z 55y"));
    }
  }

  @Test
  void card_keepsTheTermsOfItsLines() {
    Card card = TestCards.testCard();
    Card exchanged = SuitExchange.ALL.get(3).card(card);

    for (int line = 0; line < card.lines().size(); line++) {
      assertThat(exchanged.lines().get(line).id()).isEqualTo(card.lines().get(line).id());
      assertThat(exchanged.lines().get(line).terms()).isEqualTo(card.lines().get(line).terms());
      assertThat(exchanged.lines().get(line).hands()).hasSameSizeAs(card.lines().get(line).hands());
    }
  }
}
