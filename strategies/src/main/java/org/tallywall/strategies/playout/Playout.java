package org.tallywall.strategies.playout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.PassMoment;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.strategies.guess.Guess;

/**
 * Plays the rest of a game out after one choice or another, in one guess of the hidden tiles after
 * another. A world is one guess with the luck that goes with it; it depends on its number and on
 * the numbers that came with the question alone, so that all choices can be tried in the same
 * worlds, on any thread and in any order. One object is for one thread.
 */
public final class Playout {
  private final Guess hidden;
  private final List<List<Supplier<Player>>> tables;
  private final GameListener listener;
  private final Position position = new Position();
  private final List<List<FirstAnswer>> players = new ArrayList<>();
  private final List<Game> games = new ArrayList<>();
  private TableSetup setup;
  private SeatView view;
  private RandomStream random;
  private int table;

  /**
   * Playouts that nobody listens to.
   *
   * @param hidden guesses hidden tiles
   * @param tables make the players that play on, four a table, East first; the tables take turns
   */
  public Playout(Guess hidden, List<List<Supplier<Player>>> tables) {
    this(hidden, tables, GameListener.NONE);
  }

  /**
   * Playouts.
   *
   * @param hidden guesses hidden tiles
   * @param tables make the players that play on, four a table, East first; the tables take turns
   * @param listener hears what happens from the position on
   */
  public Playout(Guess hidden, List<List<Supplier<Player>>> tables, GameListener listener) {
    this.hidden = hidden;
    this.tables = tables;
    this.listener = listener;
  }

  /** Sets the first answers of the seat that chooses. */
  @FunctionalInterface
  public interface Opening {
    /**
     * Sets them.
     *
     * @param player who gives the answers
     */
    void set(FirstAnswer player);
  }

  /**
   * Takes up a question in play: a turn, or a claim.
   *
   * @param seen what the seat knows; not to change before the last playout
   * @param numbers the numbers that came with the question
   */
  public void begin(SeatView seen, RandomStream numbers) {
    view = seen;
    random = numbers;
    sit();
    position.begin(seen, numbers);
    position.ownRows(hidden.guessesWall());
    hidden.look(seen);
  }

  /**
   * Takes up a question before play.
   *
   * @param seen what the seat knows; not to change before the last playout
   * @param numbers the numbers that came with the question
   * @param moment where in the passes
   */
  public void begin(SeatView seen, RandomStream numbers, PassMoment moment) {
    begin(seen, numbers);
    position.passing(moment);
  }

  private void sit() {
    if (setup != view.table()) {
      setup = view.table();
      players.clear();
      games.clear();
      for (List<Supplier<Player>> makers : tables) {
        List<FirstAnswer> four = new ArrayList<>();
        for (int seat = 0; seat < Seats.COUNT; seat++) {
          four.add(new FirstAnswer(makers.get(seat).get()));
        }
        players.add(four);
        games.add(new Game(setup, four, listener));
      }
    }
  }

  /**
   * Guesses the hidden tiles of a world.
   *
   * @param world its number, from 0, below 2^30
   */
  public void world(int world) {
    hidden.deal(view, random.beside(Purpose.ROLLOUT, 2 * world), position);
    position.sample(2 * world + 1);
    table = world % games.size();
  }

  /**
   * Plays the present world out.
   *
   * @param opening sets the first answers
   * @return how it ended
   */
  public Outcome after(Opening opening) {
    FirstAnswer own = players.get(table).get(view.seat());
    own.clear();
    opening.set(own);
    return games.get(table).playOn(position);
  }

  /**
   * The present world.
   *
   * @return the position with its hidden tiles, to be read and not changed
   */
  public Position position() {
    return position;
  }
}
