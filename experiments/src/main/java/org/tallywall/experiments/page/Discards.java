package org.tallywall.experiments.page;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.tile.Tile;

/** All discards of a game in their order: who threw them, and in which step one was called. */
final class Discards {
  private final List<Integer> kinds = new ArrayList<>();
  private final List<String> tiles = new ArrayList<>();
  private final List<Integer> seats = new ArrayList<>();
  private final List<Integer> calledAt = new ArrayList<>();

  void thrown(int seat, int kind) {
    kinds.add(kind);
    tiles.add(Tile.symbol(kind));
    seats.add(seat);
    calledAt.add(-1);
  }

  /** The last discard was called in a step. */
  void called(int step) {
    if (!calledAt.isEmpty()) {
      calledAt.set(calledAt.size() - 1, step);
    }
  }

  /** The kind thrown last. */
  int last() {
    return kinds.get(kinds.size() - 1);
  }

  int count() {
    return tiles.size();
  }

  /** As the page's script reads it: tile, seat, step of the call or -1. */
  List<List<Object>> all() {
    List<List<Object>> all = new ArrayList<>();
    for (int at = 0; at < tiles.size(); at++) {
      all.add(List.of(tiles.get(at), seats.get(at), calledAt.get(at)));
    }
    return all;
  }
}
