package org.tallywall.experiments.school;

import java.util.List;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.review.Guesses;
import org.tallywall.experiments.review.Seated;

/**
 * What is to be found out.
 *
 * @param setup the card and the rules
 * @param players who plays, in the games and when games are played on, East's first
 * @param guesses guesses hidden tiles
 * @param seed the seed of all luck
 * @param games games that are played whole, and in which decisions are counted, 1 or more
 * @param each decisions drawn of each kind, at most, 1 or more
 * @param worlds guesses of the hidden tiles in which the choice made meets the best other, once to
 *     find out whether that one is better and once more to measure by how much, 1 or more
 */
public record SchoolQuestion(
    TableSetup setup,
    List<Seated> players,
    Guesses guesses,
    long seed,
    int games,
    int each,
    int worlds) {
  /**
   * Copies the list.
   *
   * @param setup the card and the rules
   * @param players who plays
   * @param guesses guesses hidden tiles
   * @param seed the seed
   * @param games games played whole
   * @param each decisions of each kind
   * @param worlds guesses of the hidden tiles
   * @throws IllegalArgumentException if there are not four players, or a number is below 1
   */
  public SchoolQuestion {
    players = List.copyOf(players);
    if (players.size() != 4 || games < 1 || each < 1 || worlds < 1) {
      throw new IllegalArgumentException("a school takes four players, games and decisions");
    }
  }
}
