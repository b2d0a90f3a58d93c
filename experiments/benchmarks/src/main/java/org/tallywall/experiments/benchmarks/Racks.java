package org.tallywall.experiments.benchmarks;

import org.tallywall.core.play.Deal;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.TileSet;

/** Racks of 13 tiles as they are dealt, always the same ones. */
final class Racks {
  /** How many there are; a power of two. */
  static final int COUNT = 256;

  private static final int TILES = 13;

  private Racks() {}

  /**
   * The racks.
   *
   * @return the first 13 tiles of the first walls of seed 1
   */
  static Rack[] dealt() {
    Rack[] racks = new Rack[COUNT];
    for (int at = 0; at < COUNT; at++) {
      Deal deal = Deal.of(1, at, TileSet.USUAL);
      racks[at] = new Rack();
      for (int tile = 0; tile < TILES; tile++) {
        racks[at].add(deal.tile(tile));
      }
    }
    return racks;
  }
}
