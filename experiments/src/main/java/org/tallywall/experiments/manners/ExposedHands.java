package org.tallywall.experiments.manners;

import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Tile;

/** What others can do with a tile, as far as their exposures and the tiles in sight tell. */
final class ExposedHands {
  private static final int NAMED = 3;

  private final HandMeter meter = new HandMeter();
  private final int[] obtainable = new int[Tile.KINDS];

  /** Whether a living hand of somebody who shows an exposure uses a tile if it is thrown. */
  boolean use(SeatView view, int kind) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (shows(view, seat, 1) && wanting(view, seat, kind) > 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether every living hand of somebody with three exposures wants a tile that is thrown. */
  boolean surelyWin(SeatView view, int kind) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (shows(view, seat, NAMED)) {
        int wanting = wanting(view, seat, kind);
        if (wanting > 0 && wanting == living) {
          return true;
        }
      }
    }
    return false;
  }

  private int living;

  private static boolean shows(SeatView view, int seat, int exposures) {
    return seat != view.seat() && !view.dead(seat) && view.exposures(seat).size() >= exposures;
  }

  /** How many living hands of a seat want a tile that is thrown. */
  private int wanting(SeatView view, int seat, int kind) {
    for (int one = 0; one < Tile.KINDS; one++) {
      obtainable[one] = view.unseen(one);
    }
    int jokers = view.table().rules().tiles().copies(Tile.JOKER);
    obtainable[Tile.JOKER] = jokers - view.discarded(Tile.JOKER) - view.held(Tile.JOKER);
    obtainable[kind]++;
    meter.obtainable(obtainable);
    Reach reach = view.reach(seat);
    int wanting = 0;
    living = 0;
    for (int at = 0; at < reach.size(); at++) {
      if (!meter.dead(reach, at)) {
        living++;
        wanting += reach.wants(at, kind, 1) ? 1 : 0;
      }
    }
    return wanting;
  }
}
