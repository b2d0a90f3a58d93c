package org.tallywall.experiments.reading;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.tile.Tile;

/** Of which kinds there are too few for every one of some dead hands. */
final class Blockers {
  /** So many kinds are named together. */
  private static final int MOST = 2;

  private long all = -1;
  private long some;
  private boolean every = true;

  /** Forgets all hands. */
  void clear() {
    all = -1;
    some = 0;
    every = true;
  }

  /**
   * Adds a dead hand.
   *
   * @param lack what it needs besides the exposures
   * @param obtainable how many tiles of each kind there are for it
   */
  void add(Lack lack, int[] obtainable) {
    long kinds = 0;
    for (int at = 0; at < lack.kinds(); at++) {
      if (lack.natural(at) > obtainable[lack.kind(at)]) {
        kinds |= 1L << lack.kind(at);
      }
    }
    all &= kinds;
    some |= kinds;
    every &= kinds != 0;
  }

  /**
   * A kind that blocks all the hands, the one asked about before any other; else a few that block
   * one or another; empty where more would have to be named, or jokers are missing.
   *
   * @param first the kind asked about
   */
  List<Integer> kinds(int first) {
    if ((all >>> first & 1) != 0) {
      return List.of(first);
    } else if (!every) {
      return List.of();
    } else if (all != 0) {
      return List.of(Long.numberOfTrailingZeros(all));
    }
    List<Integer> few = new ArrayList<>();
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if ((some >>> kind & 1) != 0) {
        few.add(kind);
      }
    }
    return few.size() <= MOST ? few : List.of();
  }
}
