package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.tile.TileSet;
import org.tallywall.core.tile.TileText;

/** A hand with nothing left open: its words, its heaps, and whether it can be made. */
class ConcreteHandTest {
  /** A hand from words such as {@code 1111b 22c F}, each word a group. */
  private static ConcreteHand hand(String words) {
    String[] groups = words.split(" ");
    int[] kinds = new int[groups.length];
    int[] sizes = new int[groups.length];
    for (int at = 0; at < groups.length; at++) {
      String group = groups[at];
      char last = group.charAt(group.length() - 1);
      boolean suited = "bcd".indexOf(last) >= 0;
      sizes[at] = group.length() - (suited ? 1 : 0);
      kinds[at] = TileText.tile(suited ? group.substring(0, 1) + last : group.substring(0, 1));
    }
    return new ConcreteHand(kinds, sizes);
  }

  @ParameterizedTest
  @CsvSource({
    "22c 1111b 55c 444d 333b, 1111b 333b 444d 22c 55c",
    "1b 11b FFF 0000 NNNN, NNNN 0000 FFF 11b 1b",
    "N E W S 99d 2222c 6666b, 6666b 2222c 99d N E W S",
    "2b 2b 2b 2b 5555c FFFFFF, FFFFFF 5555c 22b 22b",
    "R 3c 22d 7b 0 111b 11111c, 11111c 111b 22d 7b 3c R 0",
  })
  void words_ofAHand_areGroupsThenPairsThenSingles(String given, String printed) {
    assertThat(hand(given)).hasToString(printed);
  }

  @Test
  void hands_ofTheSameGroupsAndHeaps_areEqual() {
    ConcreteHand hand = hand("111b 2c 2c FFFF NNNNN");
    assertThat(hand("NNNNN FFFF 22c 111b")).isEqualTo(hand).hasSameHashCodeAs(hand);
    assertThat(hand("NNNNN FFFF 22c 11b 1b")).isNotEqualTo(hand);
    assertThat(hand("NNNN FFFFF 22c 111b")).isNotEqualTo(hand);
  }

  @Test
  void counts_ofAHand_tellLooseTilesFromGroups() {
    ConcreteHand hand = hand("3333c 33c FFFFF 000");
    int craks = TileText.tile("3c");
    assertThat(hand.groups()).isEqualTo(3);
    assertThat(hand.groupSize(0)).isEqualTo(5);
    assertThat(hand.groupKind(0)).isEqualTo(TileText.tile("F"));
    assertThat(hand.total(craks)).isEqualTo(6);
    assertThat(hand.loose(craks)).isEqualTo(2);
    assertThat(hand.jokersNeeded(TileSet.USUAL)).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource({
    "11b 33b 55b 77b 99b NN SS, true, true",
    "11b 11b 1b 111c FFFFFF,    false, false",
    "FF FF FF FF F 11111c,      false, false",
    "FF FF FF FF 111111c,       true, false",
    "1111b 11b FFFFFF NN,       true, false",
    "111111b 111111b FF,        true, false",
    "111111b 11111b 111b,       false, false",
    "1111b 2222b 3333b FF,      true, true",
  })
  void hand_withTheUsualTiles_canBeMadeOrNot(String words, boolean jokers, boolean none) {
    ConcreteHand hand = hand(words);
    assertThat(hand.canBeMade(TileSet.USUAL, true)).isEqualTo(jokers);
    assertThat(hand.canBeMade(TileSet.USUAL, false)).isEqualTo(none);
  }
}
