package org.tallywall.experiments.review;

import java.util.List;

/**
 * A position reviewed: what each choice is worth, under which players, and how much was played for
 * it. Everything in it is counted in games of programmed players on one card, in guesses of what
 * the seat cannot see.
 *
 * @param players who plays on in the four seats, East's first
 * @param seed the seed of all numbers
 * @param worlds guesses of the hidden tiles that were played in
 * @param games games played, over all choices
 * @param confidence the level of the ranges, between 0 and 1
 * @param choices the choices, the one that did best first
 * @param ended why no more was played
 */
public record Review(
    List<String> players,
    long seed,
    long worlds,
    long games,
    double confidence,
    List<ChoiceResult> choices,
    Ended ended) {
  /**
   * Copies the lists.
   *
   * @param players who plays on
   * @param seed the seed
   * @param worlds guesses played in
   * @param games games played
   * @param confidence the level of the ranges
   * @param choices the choices
   * @param ended why no more was played
   */
  public Review {
    players = List.copyOf(players);
    choices = List.copyOf(choices);
  }

  /** Why a review ended. */
  public enum Ended {
    /** It goes on. */
    NOT_YET,
    /** Every choice is decided: clearly behind, or told from the best to within a point. */
    DECIDED,
    /** There was nothing to choose between. */
    ONE_CHOICE,
    /** All games that it was given were played. */
    GAMES,
    /** The time that it was given was over. */
    TIME,
    /** Somebody stopped it. */
    STOPPED
  }

  /**
   * The choice that did best.
   *
   * @return the first
   */
  public ChoiceResult best() {
    return choices.get(0);
  }
}
