package org.tallywall.strategies.guess;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.PassMoment;
import org.tallywall.core.play.PassStep;
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
 * <p>Before the first pass all unseen tiles are equally likely, which is exact. Later, tiles are
 * dealt so that whoever handed tiles over to the seat has them, and the passes so far are played by
 * the players supposed: the seat gives what it gave and gets what it got, everything else is theirs
 * to choose. Of {@value #TRIED} such deals one is taken, the likelier the more of the tiles that
 * the seat got are those that the players would have chosen to pass; that is a rough likelihood,
 * not fitted to anything. Where a tile went on unseen to the seat, nobody knows whose it was; then
 * the passes are played with the known numbers of such tiles, and whoever ends with a tile that
 * lies on the seat's own rack gets another for it.
 *
 * <p>Where not all of the passes so far are known from the first on, as on many sheets, nothing is
 * read into them: all unseen tiles are equally likely, so the racks of the others are guessed to be
 * further from any hand than they are.
 */
public final class PassedTiles implements Guess {
  /** Deals that are tried for each guess, of which one is taken. */
  private static final int TRIED = 8;

  /** What a deal weighs for each tile handed over that the player supposed would have kept. */
  private static final double NOT_CHOSEN = 0.2;

  private final List<Supplier<Player>> players;
  private final int[] tiles = new int[1 << 8];
  private final Rack pool = new Rack();
  private final Position before = new Position();
  private final Rack kept = new Rack();
  private final List<PassesPlayed> seats = new ArrayList<>();
  private KnownPasses known;
  private BeforePasses start;
  private Game game;

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
    known = new KnownPasses(view);
    seats.clear();
    if (!known.known()) {
      return;
    }
    start = new BeforePasses(view, known.before());
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      seats.add(new PassesPlayed(players.get(seat).get(), seat, view.seat(), known));
    }
    game = new Game(view.table(), seats, GameListener.NONE);
  }

  @Override
  public boolean guessesWall() {
    return true;
  }

  @Override
  public void deal(SeatView view, RandomStream random, Position into) {
    double sum = 0;
    for (int tried = 0; tried < (known.known() ? TRIED : 1); tried++) {
      dealOnce(view, random);
      double weight = 1;
      for (PassesPlayed seat : seats) {
        for (int tile = seat.notChosen(); tile > 0; tile--) {
          weight *= NOT_CHOSEN;
        }
      }
      sum += weight;
      if (random.happens(weight / sum)) {
        keep(view.seat(), into);
      }
    }
    pool.set(kept);
    int count = shuffledPool(random);
    for (int at = 0; at < view.wallLeft(); at++) {
      into.wall(at, tiles[at]);
    }
  }

  private void keep(int own, Position into) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (seat != own) {
        into.rack(seat).set(before.rack(seat));
      }
    }
    kept.set(pool);
  }

  /** Deals, and plays the passes so far where they are known. */
  private void dealOnce(SeatView view, RandomStream random) {
    SeatView from = known.known() ? start : view;
    fillPool(from);
    before.begin(from, random);
    before.sample(random.below(1 << 30));
    if (known.known()) {
      layWhatIsHandedOver(view.seat());
    }
    int count = shuffledPool(random);
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      int size = seat == Seats.EAST ? 14 : 13;
      while (seat != view.seat() && before.rack(seat).total() < size) {
        before.rack(seat).add(tiles[--count]);
      }
    }
    pool.clear();
    for (int at = 0; at < count; at++) {
      pool.add(tiles[at]);
    }
    if (known.known()) {
      play(view);
    }
  }

  private void fillPool(SeatView from) {
    pool.clear();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      pool.add(kind, from.unseen(kind));
    }
  }

  /** Lays what the seat got with those who handed it over, unless it had been its own before. */
  private void layWhatIsHandedOver(int own) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (seat != own) {
        for (int kind : known.handedOverFrom(PassStep.RIGHT_1, seat)) {
          if (pool.held(kind) > 0) {
            pool.remove(kind);
            before.rack(seat).add(kind);
          }
        }
      }
    }
  }

  private int shuffledPool(RandomStream random) {
    int[] all = pool.tiles();
    System.arraycopy(all, 0, tiles, 0, all.length);
    random.shuffle(tiles, all.length);
    return all.length;
  }

  /**
   * Plays the passes so far; the racks are then those of the moment asked about. Should East be
   * dealt a hand of the card with which the rules end the game at once, they stay as dealt.
   */
  private void play(SeatView view) {
    before.passing(new PassMoment.Step(PassStep.RIGHT_1));
    int[] wall = pool.tiles();
    for (int at = 0; at < wall.length; at++) {
      before.wall(at, wall[at]);
    }
    try {
      game.playOn(before);
    } catch (PassesPlayed.Done done) {
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        done.table().view(seat).copyRack(before.rack(seat));
      }
    }
    Rack own = new Rack();
    view.copyRack(own);
    mend(view.seat(), own);
    mendGiven(view.seat());
  }

  /** Makes the seat's own rack what it is; whoever holds a tile of it gets one that is not. */
  private void mend(int own, Rack is) {
    Rack guessed = before.rack(own);
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      while (guessed.held(kind) < is.held(kind)) {
        int other = 0;
        while (guessed.held(other) <= is.held(other)) {
          other++;
        }
        Rack holder = holder(own, kind);
        holder.remove(kind);
        holder.add(other);
        guessed.remove(other);
        guessed.add(kind);
      }
    }
  }

  /** Lays what the seat gave last with whoever got it, if it did not get there. */
  private void mendGiven(int own) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      Rack rack = before.rack(seat);
      for (int kind = 0; seat != own && kind < Tile.KINDS; kind++) {
        while (rack.held(kind) < known.givenLast(seat, kind)) {
          int other = 0;
          while (rack.held(other) <= known.givenLast(seat, other)) {
            other++;
          }
          Rack holder = holder(own, kind);
          holder.remove(kind);
          holder.add(other);
          rack.remove(other);
          rack.add(kind);
        }
      }
    }
  }

  /** Who holds a tile of a kind beside what was given last, which nobody has passed on yet. */
  private Rack holder(int own, int kind) {
    for (int step = 1; step < Seats.COUNT; step++) {
      int seat = own + step & 3;
      if (before.rack(seat).held(kind) > known.givenLast(seat, kind)) {
        return before.rack(seat);
      }
    }
    return pool;
  }
}
