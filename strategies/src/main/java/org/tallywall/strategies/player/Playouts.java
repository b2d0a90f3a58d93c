package org.tallywall.strategies.player;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;

/**
 * Compares choices by playing the rest of the game out after each, from the same guesses of the
 * hidden tiles and with the same luck.
 */
final class Playouts {
  private static final GameListener NOBODY = new GameListener() {};

  private final Guess hidden;
  private final List<Supplier<Player>> inner;
  private final Effort effort;
  private final Position position = new Position();
  private final List<List<FirstAnswer>> players = new ArrayList<>();
  private final List<Game> games = new ArrayList<>();
  private TableSetup setup;

  /**
   * Playouts.
   *
   * @param hidden guesses hidden tiles
   * @param inner make the players that play on, one kind after the other
   * @param effort how much is tried
   */
  Playouts(Guess hidden, List<Supplier<Player>> inner, Effort effort) {
    this.hidden = hidden;
    this.inner = inner;
    this.effort = effort;
  }

  /** Sets the first answer of a playout. */
  @FunctionalInterface
  interface Choose {
    /**
     * Sets it.
     *
     * @param player who gives the answer
     * @param choice which of the choices, from 0
     */
    void first(FirstAnswer player, int choice);
  }

  /** Fills in what a seat cannot see. */
  @FunctionalInterface
  interface Guess {
    /**
     * Looks at what a seat knows, before the first of several guesses.
     *
     * @param view what the seat knows
     */
    default void look(SeatView view) {}

    /**
     * Whether the wall is guessed, so that its order says nothing.
     *
     * @return true if so
     */
    default boolean guessesWall() {
      return false;
    }

    /**
     * Fills in the racks of the others and the wall.
     *
     * @param view what the seat knows
     * @param random numbers for this guess
     * @param into takes the tiles
     */
    void deal(SeatView view, RandomStream random, Position into);
  }

  private void sit(SeatView view) {
    if (setup != view.table()) {
      setup = view.table();
      players.clear();
      games.clear();
      for (Supplier<Player> kind : inner) {
        List<FirstAnswer> four = new ArrayList<>();
        for (int seat = 0; seat < Seats.COUNT; seat++) {
          four.add(new FirstAnswer(kind.get()));
        }
        players.add(four);
        games.add(new Game(setup, four, NOBODY));
      }
    }
  }

  /**
   * The best of several choices; the first unless another is surely better.
   *
   * @param view what the seat knows
   * @param random the numbers that came with the question
   * @param choices how many choices there are
   * @param choose sets the first answer of a player to a choice
   * @return the choice, from 0
   */
  int best(SeatView view, RandomStream random, int choices, Choose choose) {
    sit(view);
    position.begin(view, random);
    position.ownRows(hidden.guessesWall());
    hidden.look(view);
    GainsOverUsual found = new GainsOverUsual(choices);
    List<Integer> tried = new ArrayList<>();
    for (int choice = 1; choice < choices; choice++) {
      tried.add(choice);
    }
    int left = effort.playouts();
    int world = 0;
    boolean more = !tried.isEmpty();
    while (more) {
      more = effort.halving() && tried.size() > 1;
      int rounds = Math.max(1, left / ((more ? 2 : 1) * (tried.size() + 1)));
      for (int until = world + rounds; world < until; world++) {
        play(view, random, world, tried, choose, found);
      }
      left -= rounds * (tried.size() + 1);
      if (more) {
        keepBetterHalf(tried, found);
        more = !tried.isEmpty() && left > tried.size();
      }
    }
    return surelyBest(tried, found);
  }

  /** Plays on after the usual choice and after each that is tried, in one world. */
  private void play(
      SeatView view,
      RandomStream random,
      int world,
      List<Integer> tried,
      Choose choose,
      GainsOverUsual found) {
    hidden.deal(view, random.beside(Purpose.ROLLOUT, 2 * world), position);
    position.sample(2 * world + 1);
    int kind = world % games.size();
    FirstAnswer own = players.get(kind).get(view.seat());
    choose.first(own, 0);
    int usual = games.get(kind).playOn(position).points().get(view.seat());
    for (int choice : tried) {
      choose.first(own, choice);
      found.add(choice, games.get(kind).playOn(position).points().get(view.seat()) - usual);
    }
  }

  /** Leaves the better half, one at least, of those that look better than the usual choice. */
  private static void keepBetterHalf(List<Integer> tried, GainsOverUsual found) {
    int most = Math.max(1, tried.size() / 2);
    tried.removeIf(choice -> found.mean(choice) <= 0);
    tried.sort(Comparator.comparingDouble(choice -> -found.mean(choice)));
    while (tried.size() > most) {
      tried.remove(tried.size() - 1);
    }
  }

  private int surelyBest(List<Integer> tried, GainsOverUsual found) {
    int best = 0;
    for (int choice : tried) {
      boolean sure = found.surelyBetter(choice, effort.surerBy());
      if (sure && (best == 0 || found.mean(choice) > found.mean(best))) {
        best = choice;
      }
    }
    return best;
  }
}
