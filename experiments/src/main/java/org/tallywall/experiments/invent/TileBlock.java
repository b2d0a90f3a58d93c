package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One group of a hand as it will be typed.
 *
 * @param tile the digit or letter
 * @param suit the suit letter, or 0 for a tile without suit
 * @param size tiles in the group, 1 to 6
 */
record TileBlock(String tile, char suit, int size) {
  /** A group without suit. */
  static TileBlock of(String tile, int size) {
    return new TileBlock(tile, (char) 0, size);
  }

  String text() {
    return tile.repeat(size) + (suit == 0 ? "" : String.valueOf(suit));
  }

  /** Several groups as one hand. */
  static String hand(List<TileBlock> blocks) {
    return blocks.stream().map(TileBlock::text).collect(Collectors.joining(" "));
  }

  /** Whether unequal sizes read the same from both ends, as so often in print. */
  static boolean mirrored(List<TileBlock> blocks) {
    List<Integer> sizes = blocks.stream().map(TileBlock::size).toList();
    List<Integer> reversed = new ArrayList<>(sizes);
    Collections.reverse(reversed);
    return reversed.equals(sizes) && sizes.stream().distinct().count() > 1;
  }

  /** The sizes as people say a shape: 4-2-3-3-2. */
  static String shape(List<TileBlock> blocks) {
    return blocks.stream()
        .map(block -> String.valueOf(block.size()))
        .collect(Collectors.joining("-"));
  }
}
