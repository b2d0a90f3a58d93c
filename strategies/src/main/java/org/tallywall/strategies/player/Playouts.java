package org.tallywall.strategies.player;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Outcome;
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
  private final double surerBy;
  private final int playouts;
  private final Position position = new Position();
  private final List<List<FirstAnswer>> players = new ArrayList<>();
  private final List<Game> games = new ArrayList<>();
  private TableSetup setup;

  /**
   * Playouts.
   *
   * @param hidden guesses hidden tiles
   * @param inner make the players that play on, one kind after the other
   * @param surerBy standard errors by which a choice must be better than the first
   * @param playouts playouts for one decision, over all choices; each choice has one at least
   */
  Playouts(Guess hidden, List<Supplier<Player>> inner, double surerBy, int playouts) {
    this.hidden = hidden;
    this.inner = inner;
    this.surerBy = surerBy;
    this.playouts = playouts;
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
    int samples = Math.max(1, playouts / choices);
    double[] sum = new double[choices];
    double[] squares = new double[choices];
    position.begin(view, random);
    for (int which = 0; which < samples; which++) {
      hidden.deal(view, random.beside(Purpose.ROLLOUT, 2 * which), position);
      position.sample(2 * which + 1);
      double first = 0;
      for (int choice = 0; choice < choices; choice++) {
        int kind = which % games.size();
        choose.first(players.get(kind).get(view.seat()), choice);
        Outcome outcome = games.get(kind).playOn(position);
        double points = outcome.points().get(view.seat());
        first = choice == 0 ? points : first;
        sum[choice] += points - first;
        squares[choice] += (points - first) * (points - first);
      }
    }
    return surelyBest(sum, squares, samples);
  }

  private int surelyBest(double[] sum, double[] squares, int samples) {
    int best = 0;
    double most = 0;
    for (int choice = 1; choice < sum.length; choice++) {
      double mean = sum[choice] / samples;
      double variance = squares[choice] / samples - mean * mean;
      double error = Math.sqrt(Math.max(0, variance) / samples);
      if (mean > most && mean > surerBy * error) {
        most = mean;
        best = choice;
      }
    }
    return best;
  }
}
