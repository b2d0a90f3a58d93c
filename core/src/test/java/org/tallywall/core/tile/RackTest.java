package org.tallywall.core.tile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** A handful of tiles that is added to and taken from. */
class RackTest {
  @Test
  void rack_addedToAndTakenFrom_countsByKindAndInAll() {
    Rack rack = Rack.of(0, 0, Tile.JOKER, Tile.NORTH);
    rack.add(0, 2);
    rack.remove(Tile.NORTH);
    assertThat(rack.held(0)).isEqualTo(4);
    assertThat(rack.held(Tile.NORTH)).isZero();
    assertThat(rack.jokers()).isEqualTo(1);
    assertThat(rack.total()).isEqualTo(5);
    assertThat(rack.kinds()).isEqualTo(1L | 1L << Tile.JOKER);
    assertThat(rack.tiles()).containsExactly(0, 0, 0, 0, Tile.JOKER);
  }

  @Test
  void remove_ofATileNotHeld_isRefusedAndChangesNothing() {
    Rack rack = Rack.of(5, 5);
    assertThatThrownBy(() -> rack.remove(5, 3))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("2 of 6b");
    assertThat(rack.total()).isEqualTo(2);
    assertThat(rack.held(5)).isEqualTo(2);
  }

  @Test
  void copy_changed_leavesTheFirstAsItWas() {
    Rack first = TileText.rack("113b 99d F");
    Rack copy = first.copy();
    assertThat(copy).isEqualTo(first).hasSameHashCodeAs(first);
    copy.remove(Tile.FLOWER);
    assertThat(first.held(Tile.FLOWER)).isEqualTo(1);
    assertThat(copy).isNotEqualTo(first);
  }

  @Test
  void setAndClear_ofARack_replaceWhatItHeld() {
    Rack rack = TileText.rack("55c JJ");
    rack.set(TileText.rack("NEWS"));
    assertThat(rack).hasToString("NEWS");
    assertThat(rack.total()).isEqualTo(4);
    assertThat(rack.kinds()).isEqualTo(0b1111L << Tile.NORTH);
    rack.clear();
    assertThat(rack.kinds()).isZero();
    assertThat(rack).isEqualTo(new Rack());
    assertThat(rack.toString()).isEmpty();
  }

  @Test
  void isPartOf_countsTilesOfEachKind() {
    Rack rack = TileText.rack("113b F J");
    assertThat(TileText.rack("11b J").isPartOf(rack)).isTrue();
    assertThat(rack.isPartOf(rack)).isTrue();
    assertThat(new Rack().isPartOf(rack)).isTrue();
    assertThat(TileText.rack("111b").isPartOf(rack)).isFalse();
    assertThat(TileText.rack("1b N").isPartOf(rack)).isFalse();
  }
}
