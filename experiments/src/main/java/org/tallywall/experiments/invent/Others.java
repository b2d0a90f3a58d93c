package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.List;

/** Groups of flowers, winds and dragons that fill a hand up; no tile comes twice. */
final class Others {
  private static final List<String> TILES = List.of("F", "F", "N", "E", "W", "S", "R", "G", "0");

  private Others() {}

  static List<TileBlock> blocks(Luck luck, List<Integer> sizes) {
    List<String> order = luck.shuffled(TILES).stream().distinct().toList();
    List<TileBlock> blocks = new ArrayList<>();
    for (int at = 0; at < sizes.size(); at++) {
      blocks.add(TileBlock.of(order.get(at), sizes.get(at)));
    }
    return blocks;
  }
}
