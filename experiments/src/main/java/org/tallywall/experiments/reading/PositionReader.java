package org.tallywall.experiments.reading;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TrialDiscard;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.guess.Guess;
import org.tallywall.strategies.read.OpponentReader;

/**
 * Reads a position: guesses the hidden tiles many times, and counts what the guessed racks show and
 * what would become of each tile of the rack if it were thrown as things stand. Wins are by the
 * rules; whether a tile is claimed for an exposure is what supposed players would do.
 */
public final class PositionReader {
  private final SeatView view;
  private final Guess guess;
  private final TrialDiscard trial;
  private final Position position = new Position();
  private final List<OpponentCount> opponents = new ArrayList<>();
  private final List<TileCount> tiles = new ArrayList<>();

  private PositionReader(SeatView view, Guess guess, List<? extends Player> players) {
    this.view = view;
    this.guess = guess;
    trial = new TrialDiscard(view.table(), players);
    for (int step = 1; step < Seats.COUNT; step++) {
      opponents.add(new OpponentCount(view, seat(step)));
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      if (view.held(kind) > 0) {
        tiles.add(new TileCount(kind, view.seat()));
      }
    }
  }

  /**
   * Reads a position.
   *
   * @param view what one seat knows in play, in its turn or with a discard on offer
   * @param guess guesses the hidden tiles
   * @param players who is supposed to sit there, East first
   * @param draws how many guesses
   * @return what was seen; the same for the same arguments
   * @throws org.tallywall.core.play.IllegalMoveException if a player answers with a move that is
   *     not legal
   */
  public static Reading of(
      SeatView view, Guess guess, List<? extends Player> players, Draws draws) {
    PositionReader reader = new PositionReader(view, guess, players);
    reader.draw(draws);
    return reader.reading(draws);
  }

  private int seat(int step) {
    return (view.seat() + step) % Seats.COUNT;
  }

  private void draw(Draws draws) {
    RandomStream random =
        new RandomStream(
            new StreamKey(draws.seed(), 0, Purpose.DECISION, view.seat(), 0, view.events()));
    position.begin(view, random);
    guess.look(view);
    for (int at = 0; at < draws.guesses(); at++) {
      guess.deal(view, random.beside(Purpose.ROLLOUT, 2 * at), position);
      position.sample(2 * at + 1);
      for (int step = 1; step < Seats.COUNT; step++) {
        opponents.get(step - 1).add(position.rack(seat(step)));
      }
      for (TileCount tile : tiles) {
        look(tile, at < draws.tried());
      }
    }
  }

  private void look(TileCount tile, boolean ask) {
    boolean waited = opponents.stream().anyMatch(one -> one.waitsFor(tile.kind()));
    if (waited || ask) {
      trial.throwNow(position, tile.kind());
      boolean won = tile.add(trial);
      if (ask) {
        tile.addClaims(trial, won);
      }
    } else {
      tile.quiet();
    }
  }

  private Reading reading(Draws draws) {
    OpponentReader reader = new OpponentReader();
    reader.look(view);
    List<OpponentReading> others = new ArrayList<>();
    for (int step = 1; step < Seats.COUNT; step++) {
      others.add(opponents.get(step - 1).reading(reader.lines(seat(step))));
    }
    SafeKinds safe = new SafeKinds(view);
    Thrown thrown = new Thrown(view);
    List<TileReading> kinds = new ArrayList<>();
    for (TileCount tile : tiles) {
      kinds.add(tile.reading(view, shelters(tile.kind(), safe, thrown)));
    }
    return new Reading(view, draws, others, kinds);
  }

  private Shelters shelters(int kind, SafeKinds safe, Thrown thrown) {
    List<Integer> seats = new ArrayList<>();
    List<Shelter> from = new ArrayList<>();
    for (int step = 1; step < Seats.COUNT; step++) {
      int other = seat(step);
      seats.add(other);
      Proof claim = safe.fromClaim(other, kind);
      Proof win = safe.fromWin(other, kind);
      from.add(
          new Shelter(
              win,
              claim,
              win == Proof.OUT ? safe.outOf(kind) : List.of(),
              thrown.wentBy(other, kind),
              thrown.threw(other, kind)));
    }
    return new Shelters(seats, from);
  }
}
