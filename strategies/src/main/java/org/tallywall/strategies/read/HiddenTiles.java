package org.tallywall.strategies.read;

import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Guesses the tiles that a seat cannot see, in agreement with what it sees: every tile that it does
 * not see is dealt to a rack or to the wall, each rack with as many tiles as it must have.
 *
 * <p>Racks that players have built for a while are nearer to a hand than tiles dealt at random. So
 * of several racks dealt at random a seat gets the one that is nearest to a hand which its
 * exposures allow. What the others passed and threw is not read.
 */
public final class HiddenTiles {
  private static final int RACK = 13;

  private final HandMeter meter = new HandMeter();
  private final Rack tried = new Rack();
  private final int tries;
  private int[] tiles = new int[0];
  private int count;

  /**
   * A guesser.
   *
   * @param tries racks of which a seat gets the nearest, 1 or more
   */
  public HiddenTiles(int tries) {
    this.tries = tries;
  }

  /**
   * Deals all unseen tiles.
   *
   * @param view what the seat knows
   * @param random numbers for this guess
   * @param into takes the racks of the others and the wall
   */
  public void deal(SeatView view, RandomStream random, Position into) {
    collect(view);
    random.shuffle(tiles, count);
    int from = 0;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (seat != view.seat()) {
        int size = RACK;
        for (Exposure exposure : view.exposures(seat)) {
          size -= exposure.size();
        }
        moveNearest(view, seat, from, size);
        fill(into.rack(seat), from, size);
        from += size;
      }
    }
    for (int at = 0; at < view.wallLeft(); at++) {
      into.wall(at, tiles[from + at]);
    }
  }

  private void collect(SeatView view) {
    int all = view.table().rules().tiles().size();
    if (tiles.length < all) {
      tiles = new int[all];
    }
    count = 0;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      for (int copy = view.unseen(kind); copy > 0; copy--) {
        tiles[count++] = kind;
      }
    }
  }

  private void fill(Rack rack, int from, int size) {
    rack.clear();
    for (int at = 0; at < size; at++) {
      rack.add(tiles[from + at]);
    }
  }

  /** Brings the nearest of the next few racks to the front. */
  private void moveNearest(SeatView view, int seat, int from, int size) {
    int nearest = 0;
    int least = HandMeter.NONE;
    for (int which = 0; which < tries && tries > 1 && from + (which + 1) * size <= count; which++) {
      fill(tried, from + which * size, size);
      meter.hold(tried);
      int away = meter.least(view.reach(seat), least);
      if (away < least) {
        least = away;
        nearest = which;
      }
    }
    for (int at = 0; nearest > 0 && at < size; at++) {
      int other = from + nearest * size + at;
      int kept = tiles[from + at];
      tiles[from + at] = tiles[other];
      tiles[other] = kept;
    }
  }
}
