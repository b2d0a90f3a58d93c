package org.tallywall.core.tile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tiles on the table (case EC-01 of the rules, and the table's own flowers and jokers). */
class TileSetTest {
  @Test
  void usualSet_counted_isFourOfEach34KindsEightFlowersAndEightJokers() {
    int[] counts = new int[Tile.KINDS];
    for (int kind : TileSet.USUAL.tiles()) {
      counts[kind]++;
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      assertThat(counts[kind]).isEqualTo(kind < 34 ? 4 : 8).isEqualTo(TileSet.USUAL.copies(kind));
    }
    assertThat(TileSet.USUAL.size()).isEqualTo(152);
  }

  @Test
  void otherSet_counted_hasItsOwnFlowersAndJokers() {
    TileSet set = new TileSet(16, 0);
    assertThat(set.copies(Tile.FLOWER)).isEqualTo(16);
    assertThat(set.copies(Tile.JOKER)).isZero();
    assertThat(set.tiles()).hasSize(set.size()).hasSize(152).doesNotContain(Tile.JOKER);
  }

  @ParameterizedTest
  @CsvSource({"3,8", "17,8", "8,-1", "8,13"})
  void set_outsideTheRange_isRefused(int flowers, int jokers) {
    assertThatThrownBy(() -> new TileSet(flowers, jokers))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is not in");
  }
}
