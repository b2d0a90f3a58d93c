package org.tallywall.experiments.reading;

import java.util.Arrays;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Tile;

/** Which kinds each seat threw, and which it let go by with the rack that it has now. */
final class Thrown {
  private final long[] threw = new long[Seats.COUNT];
  private final long[] wentBy = new long[Seats.COUNT];

  /**
   * Looks through the discards of which the order is known; the one on offer is not settled yet.
   *
   * @param view what one seat knows
   */
  Thrown(SeatView view) {
    boolean[] changed = new boolean[Seats.COUNT];
    for (int at = view.discards() - (view.offered() >= 0 ? 2 : 1); at >= 0; at--) {
      long bit = 1L << view.discardTile(at);
      int thrower = view.discardSeat(at);
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        wentBy[seat] |= changed[seat] ? 0 : bit;
      }
      changed[thrower] = true;
      threw[thrower] |= bit;
    }
    if (view.offered() >= 0) {
      // Whoever threw the tile on offer has had another rack since she let the earlier ones go by.
      Arrays.fill(wentBy, view.offeredBy(), view.offeredBy() + 1, 1L << view.offered());
      threw[view.offeredBy()] |= 1L << view.offered();
    }
  }

  /** Whether a seat threw a kind, or let it go by, with the rack that it has now. */
  boolean wentBy(int seat, int kind) {
    return kind < Tile.NATURALS && (wentBy[seat] >>> kind & 1) != 0;
  }

  /** Whether a seat threw a kind at any time. */
  boolean threw(int seat, int kind) {
    return kind < Tile.NATURALS && (threw[seat] >>> kind & 1) != 0;
  }
}
