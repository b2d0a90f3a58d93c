package org.tallywall.experiments.review;

import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.Player;
import org.tallywall.strategies.guess.Guess;
import org.tallywall.strategies.guess.WeighedTiles;

/** Makes what guesses hidden tiles, one for each thread. */
@FunctionalInterface
public interface Guesses {
  /** What is guessed unless somebody says otherwise. */
  Guesses USUAL = WeighedTiles::new;

  /**
   * A guess for one thread.
   *
   * @param players make those who are thought to sit there, East's first
   * @param kinds what they are called in the list of players, East's first
   * @return the guess
   */
  Guess of(List<Supplier<Player>> players, List<String> kinds);
}
