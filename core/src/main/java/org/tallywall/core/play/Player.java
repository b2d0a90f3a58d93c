package org.tallywall.core.play;

import org.tallywall.core.random.RandomStream;

/**
 * How a seat decides. A player is asked and answers; it never drives the game.
 *
 * <p>It keeps nothing between questions that the view could not rebuild: one that is made in
 * mid-game answers as one that sat there from the deal. Caches are allowed, where they change no
 * answer. With each question comes a stream of random numbers of its own, which belongs to that
 * question alone. One player object is used by one thread at a time, for many games, and may sit at
 * one seat only.
 */
public interface Player {
  /** A player that aims at no line. */
  int NO_AIM = -1;

  /**
   * East, complete before play: whether to declare mahjong now (rule 2.6).
   *
   * @param view what the seat knows
   * @param random numbers for this question
   * @return true to declare
   */
  boolean declares(SeatView view, RandomStream random);

  /**
   * Which tiles to pass, and how many of the three blind (rules 2.1 to 2.3).
   *
   * @param view what the seat knows
   * @param step the pass
   * @param random numbers for this question
   * @return a legal pass
   */
  PassChoice pass(SeatView view, PassStep step, RandomStream random);

  /**
   * Whether to stop the passes after the first round (rule 2.4).
   *
   * @param view what the seat knows
   * @param random numbers for this question
   * @return true to stop
   */
  boolean stops(SeatView view, RandomStream random);

  /**
   * How many tiles to offer across in the courtesy pass (rule 2.5).
   *
   * @param view what the seat knows
   * @param random numbers for this question
   * @return 0 to 3
   */
  int courtesyNumber(SeatView view, RandomStream random);

  /**
   * Which tiles to give across.
   *
   * @param view what the seat knows
   * @param number how many, 1 to 3
   * @param random numbers for this question
   * @return kinds of that many tiles of the rack, no jokers
   */
  int[] courtesyTiles(SeatView view, int number, RandomStream random);

  /**
   * What to do with the discard on offer (rule 3.3). It is asked only where a claim is legal.
   *
   * @param view what the seat knows; the tile is {@link SeatView#offered()}
   * @param random numbers for this question
   * @return a legal choice
   */
  ClaimChoice claim(SeatView view, RandomStream random);

  /**
   * What to do next in one's own turn, with 14 tiles (rule 3.2). It is asked again after each
   * exchange.
   *
   * @param view what the seat knows
   * @param random numbers for this question
   * @return a legal choice
   */
  TurnChoice turn(SeatView view, RandomStream random);

  /**
   * What the player is aiming at, for statistics. It may be asked at any time.
   *
   * @param view what the seat knows
   * @return a line's place on the card, or {@link #NO_AIM}
   */
  default int aim(SeatView view) {
    return NO_AIM;
  }
}
