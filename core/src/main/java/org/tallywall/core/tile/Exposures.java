package org.tallywall.core.tile;

/** Every exposure there can be, made once. */
final class Exposures {
  private static final int LARGEST = 6;
  private static final Exposure[][][] ALL = new Exposure[Tile.NATURALS][LARGEST + 1][LARGEST];

  static {
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      for (int size = 3; size <= LARGEST; size++) {
        for (int jokers = 0; jokers < size; jokers++) {
          ALL[kind][size][jokers] = new Exposure(kind, size, jokers);
        }
      }
    }
  }

  private Exposures() {}

  static Exposure of(int kind, int size, int jokers) {
    boolean known = kind >= 0 && kind < Tile.NATURALS && size >= 3 && size <= LARGEST;
    return known && jokers >= 0 && jokers < size
        ? ALL[kind][size][jokers]
        : new Exposure(kind, size, jokers);
  }
}
