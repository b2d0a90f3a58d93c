package org.tallywall.experiments.manners;

import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.NearHands;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** The living hands nearest to a rack, by the meter of the game itself. */
final class NearHand {
  private final HandMeter meter = new HandMeter();
  private final NearHands near = new NearHands();
  private final int[] obtainable = new int[Tile.KINDS];
  private Reach reach;

  /**
   * Measures a rack.
   *
   * @param view what the seat knows
   * @param rack its concealed tiles, as they are or might be
   * @param possible the hands that its exposures leave possible
   * @param slack how much further than the nearest a hand may be
   */
  void look(SeatView view, Rack rack, Reach possible, int slack) {
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      obtainable[kind] = view.held(kind) + view.unseen(kind);
    }
    int jokers = view.table().rules().tiles().copies(Tile.JOKER);
    obtainable[Tile.JOKER] = jokers - view.discarded(Tile.JOKER);
    if (view.offered() >= 0 && view.offeredBy() != view.seat()) {
      obtainable[view.offered()]++;
    }
    reach = possible;
    meter.obtainable(obtainable);
    meter.hold(rack);
    meter.nearest(possible, slack, near);
  }

  /** How far the nearest living hand is; {@link HandMeter#NONE} where there is none. */
  int away() {
    return near.count() == 0 ? HandMeter.NONE : near.least();
  }

  /** Whether one of the hands found uses the last of so many tiles of a kind. */
  boolean uses(int kind, int held) {
    for (int at = 0; at < near.count(); at++) {
      if (reach.wants(near.hand(at), kind, held)) {
        return true;
      }
    }
    return false;
  }
}
