package org.tallywall.core.random;

import org.tallywall.core.tile.TileSet;

/** Shuffled walls as tile numbers 0 to 151, as deals shuffle them, for tests of the shuffle. */
final class Walls {
  static final int TILES = 152;
  private static final int[] KIND = TileSet.USUAL.tiles();

  private final RandomStream stream;
  private final int[] wall = new int[TILES];
  private final long seed;

  Walls(long seed) {
    this.seed = seed;
    this.stream = new RandomStream(new StreamKey(seed, 0, Purpose.WALL, 0, 0, 0));
  }

  /** The wall of a deal, tile by tile; the array is used again for the next. */
  int[] wall(long deal) {
    for (int id = 0; id < TILES; id++) {
      wall[id] = id;
    }
    stream.begin(seed, deal);
    stream.turnTo(Purpose.WALL, 0, 0, 0);
    stream.shuffle(wall, TILES);
    return wall;
  }

  /** The kind of a tile. */
  static int kind(int id) {
    return KIND[id];
  }
}
