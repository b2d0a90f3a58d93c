package org.tallywall.core.play;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.core.tile.TileText;

/**
 * A wall in which given racks are dealt and given tiles drawn; what is left open is filled with
 * naturals first, so that jokers lie at the end.
 */
final class StackedWall {
  private final TileSet set;
  private final int[] wall;
  private final int[] dice = {1, 2};
  private final Rack left = new Rack();

  StackedWall(TileSet set) {
    this.set = set;
    this.wall = new int[set.size()];
    Arrays.fill(wall, -1);
    for (int tile : set.tiles()) {
      left.add(tile);
    }
  }

  StackedWall rack(int seat, String tiles) {
    int[] kinds = TileText.rack(tiles).tiles();
    int used = 0;
    for (int at = 0; at < Deal.DEALT && used < kinds.length; at++) {
      if (Deal.dealtTo(at) == seat) {
        put(at, kinds[used++]);
      }
    }
    if (used < kinds.length) {
      throw new IllegalArgumentException("too many tiles for seat " + seat);
    }
    return this;
  }

  StackedWall draws(String tiles) {
    int at = Deal.DEALT;
    for (String word : tiles.split(" ")) {
      put(at++, TileText.tile(word));
    }
    return this;
  }

  /** The tiles drawn last, the very last one at the end. */
  StackedWall lastDraws(String tiles) {
    String[] words = tiles.split(" ");
    for (int at = 0; at < words.length; at++) {
      put(wall.length - words.length + at, TileText.tile(words[at]));
    }
    return this;
  }

  StackedWall dice(int first, int second) {
    dice[0] = first;
    dice[1] = second;
    return this;
  }

  private void put(int at, int tile) {
    left.remove(tile);
    wall[at] = tile;
  }

  Deal deal() {
    List<Integer> filler = new ArrayList<>();
    for (int copy = 0; copy < 16; copy++) {
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        if (left.held(kind) > copy) {
          filler.add(kind);
        }
      }
    }
    for (int joker = 0; joker < left.jokers(); joker++) {
      filler.add(Tile.JOKER);
    }
    int next = 0;
    int[] whole = wall.clone();
    for (int at = 0; at < whole.length; at++) {
      whole[at] = whole[at] < 0 ? filler.get(next++) : whole[at];
    }
    if (whole.length != set.size()) {
      throw new IllegalStateException("the wall is not whole");
    }
    return Deal.stacked(1, 0, whole, dice);
  }
}
