package org.tallywall.core.play;

import java.util.Arrays;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.RackMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.rules.Settlement;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Tells whether a seat's tiles are a hand of the card. It keeps a lower bound of each seat's
 * distance: one tile gained brings a rack nearer by one at most, so a rack that was far off need
 * not be measured at every tile.
 */
final class WinCheck {
  private final GameState state;
  private final HandMeter meter = new HandMeter();
  private final RackMeter[] meters = new RackMeter[Seats.COUNT];
  private final Rack scratch = new Rack();
  private final int[] bound = new int[Seats.COUNT];
  private final long[] waits = new long[Seats.COUNT];
  private final boolean[] waitsKnown = new boolean[Seats.COUNT];

  WinCheck(GameState state) {
    this.state = state;
    Arrays.setAll(meters, seat -> new RackMeter());
  }

  /** Forgets all bounds, as at a new deal. */
  void clear() {
    Arrays.fill(bound, 0);
    Arrays.fill(waitsKnown, false);
  }

  /** Forgets a seat's bound, as after a pass. */
  void forget(int seat) {
    bound[seat] = 0;
    waitsKnown[seat] = false;
  }

  /**
   * Notes that a seat gained one tile, or a joker for a natural. Whoever gives a tile away in a
   * turn has gained one in the same turn, so a discard need not be noted.
   */
  void gained(int seat) {
    bound[seat] = Math.max(0, bound[seat] - 1);
    waitsKnown[seat] = false;
  }

  /** The seat's meter, which holds the rack as it is. */
  RackMeter meter(int seat) {
    RackMeter meter = meters[seat];
    meter.hold(state.racks[seat], state.reach(seat));
    return meter;
  }

  /** Whether the seat's 14 tiles are a hand of the card. */
  boolean complete(int seat) {
    if (bound[seat] > 0) {
      return false;
    }
    bound[seat] = meter(seat).least();
    return bound[seat] == 0;
  }

  /** Whether the seat's 13 tiles and one more are a hand of the card. */
  boolean completeWith(int seat, int tile) {
    return (waits(seat) >>> tile & 1) != 0;
  }

  /** The kinds that make the seat's 13 tiles a hand of the card, as a mask. */
  long waits(int seat) {
    if (bound[seat] > 1) {
      return 0;
    }
    if (!waitsKnown[seat]) {
      RackMeter meter = meter(seat);
      bound[seat] = meter.least();
      waits[seat] = bound[seat] == 1 ? meter.waits() : 0;
      waitsKnown[seat] = true;
    }
    return waits[seat];
  }

  /**
   * The concrete hand that pays most.
   *
   * @param seat whose tiles
   * @param extra a claimed tile, or {@link GameState#NONE}
   * @param line only this line, or any where negative
   * @param settlement tells what a line pays
   * @return index among all hands of the card, or -1 where the tiles are no such hand
   */
  int best(int seat, int extra, int line, Settlement settlement) {
    scratch.set(state.racks[seat]);
    if (extra != GameState.NONE) {
      scratch.add(extra);
    }
    meter.hold(scratch);
    int jokers = scratch.jokers() + exposedJokers(seat);
    Reach reach = state.reach(seat);
    int best = -1;
    int most = 0;
    for (int at = 0; at < reach.size(); at++) {
      if ((line < 0 || reach.line(at) == line) && meter.away(reach, at) == 0) {
        int unit = settlement.unit(reach.hands().line(reach.line(at)), jokers);
        if (unit > most) {
          most = unit;
          best = reach.index(at);
        }
      }
    }
    return best;
  }

  int jokers(int seat, int extra) {
    return state.racks[seat].jokers() + exposedJokers(seat) + (extra == Tile.JOKER ? 1 : 0);
  }

  private int exposedJokers(int seat) {
    int jokers = 0;
    for (Exposure exposure : state.exposures(seat)) {
      jokers += exposure.jokers();
    }
    return jokers;
  }
}
