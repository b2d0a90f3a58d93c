package org.tallywall.strategies.guess;

import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.read.OpponentReader;

/**
 * Guesses the tiles that a seat cannot see by how well they fit what it saw: exposures, discards,
 * what was let lie, passed and said, for players of given kinds. In the passes it does what {@link
 * PassedTiles} does.
 *
 * <p>The racks of the three others are drawn one after the other, in an order drawn anew for each
 * guess, out of the tiles that are left ({@link OpponentDraw}); then each is drawn again with the
 * other two as they are. The wall gets what is left, in any order. Discards that a sheet leaves out
 * lie among the tiles that are nowhere.
 */
public final class WeighedTiles implements Guess {
  /** Racks of each opponent tried first, to see where those lie that fit. */
  private static final int TRIED = 300;

  /** Racks proposed for each opponent the first time, and each further time. */
  private static final int FIRST = 6;

  private static final int AGAIN = 4;
  private static final int SWEEPS = 1;

  private final OpponentDraw[] draws = new OpponentDraw[Seats.COUNT];
  private final int[] left = new int[Tile.KINDS];
  private final int[] order = new int[Seats.COUNT - 1];
  private final PassedTiles passed;
  private int[] tiles = {};
  private boolean passing;
  private boolean aimed;
  private int own;

  /**
   * A guess.
   *
   * @param players make the players supposed at the four seats, East first; they are asked in the
   *     passes alone
   * @param kinds what the players at the four seats are called in the catalog, East first; those of
   *     which nothing is known are taken for players in general
   */
  public WeighedTiles(List<Supplier<Player>> players, List<String> kinds) {
    passed = new PassedTiles(players);
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      draws[seat] = new OpponentDraw(TraitWeights.of(kinds.get(seat)));
    }
  }

  @Override
  public void look(SeatView view) {
    aimed = false;
    own = view.seat();
    passing = PassedTiles.fits(view);
    if (passing) {
      passed.look(view);
      return;
    }
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (seat != view.seat()) {
        draws[seat].look(view, seat, OpponentReader.concealed(view, seat));
      }
    }
    int size = view.table().rules().tiles().size();
    tiles = tiles.length < size ? new int[size] : tiles;
  }

  @Override
  public boolean guessesWall() {
    return true;
  }

  @Override
  public void deal(SeatView view, RandomStream random, Position into) {
    if (passing) {
      passed.deal(view, random, into);
      return;
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      left[kind] = view.unseen(kind);
    }
    for (int step = 1; step < Seats.COUNT; step++) {
      int seat = (view.seat() + step) % Seats.COUNT;
      order[step - 1] = seat;
      if (!aimed) {
        draws[seat].aim(TRIED, random.beside(Purpose.ROLLOUT, Integer.MAX_VALUE - step));
      }
      draws[seat].clear();
    }
    aimed = true;
    random.shuffle(order, order.length);
    for (int sweep = 0; sweep <= SWEEPS; sweep++) {
      for (int seat : order) {
        draws[seat].draw(left, sweep == 0 ? FIRST : AGAIN, random);
      }
    }
    for (int seat : order) {
      into.rack(seat).set(draws[seat].rack());
    }
    dealWall(view, random, into);
  }

  private void dealWall(SeatView view, RandomStream random, Position into) {
    int count = 0;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      for (int copy = left[kind]; copy > 0; copy--) {
        tiles[count++] = kind;
      }
    }
    random.shuffle(tiles, count);
    for (int at = 0; at < view.wallLeft(); at++) {
      into.wall(at, tiles[at]);
    }
  }

  /**
   * How many of the racks proposed for a seat count, since the last look: the mean effective sample
   * size (Kong, Liu and Wong, J. Am. Statist. Assoc. 89, 1994, 278–288, from memory).
   *
   * @param seat an opponent, 0 to 3
   * @return 1 to the number proposed; 0 where none could be weighed, and in the passes
   */
  public double effective(int seat) {
    return passing || seat == own ? 0 : draws[seat].effective();
  }
}
