package org.tallywall.strategies.guess;

import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.random.RandomStream;

/** Fills in what a seat cannot see. One object is for one thread. */
@FunctionalInterface
public interface Guess {
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
