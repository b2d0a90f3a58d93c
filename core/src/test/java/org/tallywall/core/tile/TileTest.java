package org.tallywall.core.tile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The kinds and their symbols, which card files, racks and records are written in. */
class TileTest {
  @ParameterizedTest
  @CsvSource({
    "0,1b", "8,9b", "9,1c", "17,9c", "18,1d", "26,9d", "27,N", "28,E", "29,W", "30,S", "31,R",
    "32,G", "33,0", "34,F", "35,J"
  })
  void symbol_ofAKind_isTheOneOfTheNotation(int kind, String symbol) {
    assertThat(Tile.symbol(kind)).isEqualTo(symbol);
    assertThat(TileText.tile(symbol)).isEqualTo(kind);
  }

  @Test
  void symbols_ofAllKinds_areDifferent() {
    Set<String> symbols = new HashSet<>();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      symbols.add(Tile.symbol(kind));
    }
    assertThat(symbols).hasSize(36);
  }

  @Test
  void suited_ofSuitAndNumber_isUndoneBySuitOfAndNumberOf() {
    for (int suit = 0; suit < 3; suit++) {
      for (int number = 1; number <= 9; number++) {
        int kind = Tile.suited(suit, number);
        assertThat(Tile.suitOf(kind)).isEqualTo(suit);
        assertThat(Tile.numberOf(kind)).isEqualTo(number);
        assertThat(Tile.isSuited(kind)).isTrue();
      }
    }
    assertThat(Tile.isSuited(Tile.NORTH)).isFalse();
    assertThat(Tile.isSuited(Tile.JOKER)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"-1,5", "3,5", "0,0", "0,10"})
  void suited_outsideTheRange_isRefused(int suit, int number) {
    assertThatThrownBy(() -> Tile.suited(suit, number))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void dragonOf_eachSuit_isTheMatchingOne() {
    assertThat(Tile.dragonOf(Tile.suitLetter('b'))).isEqualTo(Tile.GREEN);
    assertThat(Tile.dragonOf(Tile.suitLetter('c'))).isEqualTo(Tile.RED);
    assertThat(Tile.dragonOf(Tile.suitLetter('d'))).isEqualTo(Tile.SOAP);
  }
}
