package org.tallywall.experiments.review;

import java.util.List;
import org.tallywall.core.sheet.PositionSheet;

/**
 * What is to be found out.
 *
 * @param sheet the position
 * @param choices the choices, at least one, each allowed by the rules
 * @param players who is thought to sit in the four seats, East's first; the one whose choice it is
 *     plays on like the one named there, too
 * @param guesses guesses hidden tiles
 * @param seed the seed of all numbers
 */
public record ReviewQuestion(
    PositionSheet sheet,
    List<Considered> choices,
    List<Seated> players,
    Guesses guesses,
    long seed) {
  /**
   * Copies the lists.
   *
   * @param sheet the position
   * @param choices the choices
   * @param players who sits where
   * @param guesses guesses hidden tiles
   * @param seed the seed
   * @throws IllegalArgumentException if there is no choice, or there are not four players
   */
  public ReviewQuestion {
    choices = List.copyOf(choices);
    players = List.copyOf(players);
    if (choices.isEmpty() || players.size() != 4) {
      throw new IllegalArgumentException("a review takes a choice and four players");
    }
  }
}
