package org.tallywall.experiments.reading;

import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.Player;
import org.tallywall.strategies.guess.Guess;
import org.tallywall.strategies.guess.LikelyTiles;

/** Makes what guesses the tiles that a seat cannot see: the one place that says how. */
public final class HiddenTiles {
  private HiddenTiles() {}

  /**
   * A guess.
   *
   * @param players make those who are supposed to sit there, East's first
   * @return a new one, for one thread
   */
  public static Guess guess(List<Supplier<Player>> players) {
    return new LikelyTiles();
  }
}
