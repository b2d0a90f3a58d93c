package org.tallywall.strategies.hand;

import java.util.Arrays;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * How many tiles of each kind a seat can have at most: those on its rack and those it cannot see,
 * and of jokers those laid open too, which can be redeemed. A tile that another offers counts as
 * one that can be had.
 */
public final class Obtainable {
  /** What became of the counts since they were taken last. */
  public enum Change {
    /** All are the same. */
    NONE,
    /** Some are smaller, none is larger. */
    LESS,
    /** Some are larger. */
    MORE
  }

  private final int[] copies = new int[Tile.KINDS];
  private final int[] faceUp = new int[Tile.KINDS];
  private int[] counts = new int[Tile.KINDS];
  private int[] before = new int[Tile.KINDS];
  private TileSet tiles;

  /** Nothing counted yet. */
  public Obtainable() {}

  /**
   * Counts.
   *
   * @param view what the seat knows
   * @return how the counts compare with those taken last
   */
  public Change count(SeatView view) {
    setOut(view.table().rules().tiles());
    int[] old = counts;
    counts = before;
    before = old;
    view.copyFaceUp(faceUp);
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      counts[kind] = copies[kind] - faceUp[kind];
    }
    counts[Tile.JOKER] = copies[Tile.JOKER] - view.discarded(Tile.JOKER);
    int offered = view.offered();
    if (offered >= 0 && view.offeredBy() != view.seat()) {
      counts[offered]++;
    }
    return change();
  }

  private void setOut(TileSet set) {
    if (set != tiles) {
      tiles = set;
      Arrays.setAll(copies, set::copies);
    }
  }

  private Change change() {
    Change change = Change.NONE;
    int kind = Arrays.mismatch(counts, before);
    while (kind >= 0 && kind < Tile.KINDS) {
      if (counts[kind] > before[kind]) {
        return Change.MORE;
      }
      change = Change.LESS;
      kind++;
    }
    return change;
  }

  /**
   * The counts taken last.
   *
   * @return a live array, by kind
   */
  public int[] counts() {
    return counts;
  }

  /**
   * How many tiles of a kind lay face up when it was counted last.
   *
   * @param kind a kind
   * @return 0 or more
   */
  int faceUp(int kind) {
    return faceUp[kind];
  }
}
