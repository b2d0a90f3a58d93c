package org.tallywall.strategies.guess;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Guesses the tiles that a seat cannot see while tiles are passed, and in East's first turn.
 *
 * <p>Before the first pass all unseen tiles are equally likely, which is exact. Later, the passes
 * so far are played once more by the players supposed, from racks as they may have been dealt
 * ({@link PassesAgain}): the seat gives what it gave and gets what it got, everything else is
 * theirs to choose. So what was given last is with whoever got it, and the racks of the others are
 * as much better than dealt ones as passes make them. Where tiles went on unseen, nobody knows
 * whose they were; any that came in may be the ones.
 *
 * <p>Where not all of the passes so far are known from the first on, as on many sheets, nothing is
 * read into them: all unseen tiles are equally likely, so the racks of the others are guessed to be
 * further from any hand than they are.
 */
public final class PassedTiles implements Guess {
  private final List<Supplier<Player>> players;
  private final Rack pool = new Rack();
  private PassesAgain passes;

  /**
   * A guess.
   *
   * @param players make the players supposed at the four seats, East first
   */
  public PassedTiles(List<Supplier<Player>> players) {
    this.players = List.copyOf(players);
  }

  /**
   * Whether a seat may be asked in the passes, or is East and about to throw the first tile:
   * nothing is drawn, thrown or laid open.
   *
   * @param view what the seat knows
   * @return true if so
   */
  public static boolean fits(SeatView view) {
    boolean begun =
        view.discards() > 0 || view.wallLeft() < view.table().rules().tiles().size() - Deal.DEALT;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      begun |= view.faceUp(kind) > 0;
    }
    return !begun;
  }

  @Override
  public void look(SeatView view) {
    KnownPasses known = new KnownPasses(view);
    passes = null;
    if (known.known()) {
      List<Player> four = new ArrayList<>();
      for (Supplier<Player> player : players) {
        four.add(player.get());
      }
      passes = new PassesAgain(view, known, four);
    }
  }

  @Override
  public boolean guessesWall() {
    return true;
  }

  @Override
  public void deal(SeatView view, RandomStream random, Position into) {
    if (passes == null) {
      anyTiles(view, random, into);
      return;
    }
    passes.play(random);
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (seat != view.seat()) {
        into.rack(seat).set(passes.rack(seat));
      }
    }
    pool.set(passes.pool());
    wall(view, random, into);
  }

  private void anyTiles(SeatView view, RandomStream random, Position into) {
    pool.clear();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      pool.add(kind, view.unseen(kind));
    }
    int[] tiles = pool.tiles();
    random.shuffle(tiles, tiles.length);
    int next = 0;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (seat != view.seat()) {
        into.rack(seat).clear();
        for (int size = Deal.tilesOf(seat); size > 0; size--) {
          pool.remove(tiles[next]);
          into.rack(seat).add(tiles[next++]);
        }
      }
    }
    wall(view, random, into);
  }

  private void wall(SeatView view, RandomStream random, Position into) {
    int[] tiles = pool.tiles();
    random.shuffle(tiles, tiles.length);
    for (int at = 0; at < view.wallLeft(); at++) {
      into.wall(at, tiles[at]);
    }
  }
}
