package org.tallywall.strategies.player;

import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.guess.Guess;

/**
 * A guess of hidden tiles by a yardstick: the racks of the others lie as they lie, if it knows
 * them, and the wall in any order; the draws that it knows come first in the row that its seat
 * draws from, whatever is claimed. The rest is guessed by another.
 */
final class KnownTiles implements Guess {
  private final Knowledge knowledge;
  private final Guess rest;
  private final int[] left = new int[Tile.KINDS];
  private final Rack draws = new Rack();
  private int[] coming = {};

  /**
   * A guess.
   *
   * @param knowledge what is known
   * @param rest what guesses the rest
   */
  KnownTiles(Knowledge knowledge, Guess rest) {
    this.knowledge = knowledge;
    this.rest = rest;
  }

  @Override
  public void look(SeatView view) {
    rest.look(view);
    boolean offered = view.offered() >= 0 && view.offeredBy() != view.seat();
    coming = knowledge.draws(view, !offered);
  }

  @Override
  public boolean guessesWall() {
    return true;
  }

  @Override
  public void deal(SeatView view, RandomStream random, Position into) {
    if (knowledge.layRacks(into)) {
      shuffleWall(view, random, into);
    } else {
      rest.deal(view, random, into);
    }
    for (int at = 0; at < coming.length; at++) {
      put(coming[at], view.seat() + Seats.COUNT * at, view, into);
    }
  }

  /** Exchanges a tile of the wall for one that belongs there. */
  private static void put(int tile, int place, SeatView view, Position into) {
    int other = into.wall(place);
    if (other == tile) {
      return;
    }
    for (int at = 0; at < view.wallLeft(); at++) {
      boolean settled = at < place && (place - at) % Seats.COUNT == 0;
      if (!settled && into.wall(at) == tile) {
        into.wall(at, other);
        into.wall(place, tile);
        return;
      }
    }
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      Rack rack = into.rack(seat);
      if (seat != view.seat() && rack.held(tile) > 0) {
        rack.remove(tile);
        rack.add(other);
        into.wall(place, tile);
        return;
      }
    }
    throw new IllegalStateException("a tile that is to be drawn lies nowhere");
  }

  private void shuffleWall(SeatView view, RandomStream random, Position into) {
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      left[kind] = view.unseen(kind) - knowledge.elsewhere(kind);
    }
    int size = 0;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      for (int copy = 0; copy < left[kind]; copy++) {
        int at = random.below(size + 1);
        if (at < size) {
          into.wall(size, into.wall(at));
        }
        into.wall(at, kind);
        size++;
      }
    }
  }
}
