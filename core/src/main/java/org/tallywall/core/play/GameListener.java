package org.tallywall.core.play;

import org.tallywall.core.tile.Exposure;

/**
 * Hears every event of a game in the order in which the table sees it, after it took effect. Arrays
 * belong to the game and must be copied to be kept. Seats in masks are bits: bit 0 is East.
 */
public interface GameListener {
  /** Hears nothing. */
  GameListener NONE = new GameListener() {};

  /**
   * A game begins; the tiles are dealt.
   *
   * @param table the table laid open; live until the game ends
   */
  default void began(OpenTable table) {}

  /**
   * Whether players are to be asked what they aim at.
   *
   * @return true to hear {@link #aimed}
   */
  default boolean wantsAims() {
    return false;
  }

  /**
   * Whether one player is to be asked what it aims at, where players are asked at all. It may
   * change from game to game.
   *
   * @param seat 0 to 3
   * @return true to hear {@link #aimed} of this seat
   */
  default boolean wantsAimsOf(int seat) {
    return true;
  }

  /**
   * One player's part of a pass. All four come in the order of seats, after all tiles have moved.
   *
   * @param step the pass
   * @param from who passed
   * @param own kinds set out from the rack, ascending
   * @param forwarded kinds that went on unseen
   */
  default void passed(PassStep step, int from, int[] own, int[] forwarded) {}

  /**
   * The stop question was asked.
   *
   * @param stoppers mask of those who stopped; 0 for none
   */
  default void stopAsked(int stoppers) {}

  /**
   * The courtesy pass of a pair of opposite seats.
   *
   * @param low the lower seat, 0 or 1; the other is across
   * @param asked the two numbers, lower seat first
   * @param lowGave kinds that the lower seat gave
   * @param highGave kinds that the higher seat gave
   */
  default void courtesy(int low, int[] asked, int[] lowGave, int[] highGave) {}

  /**
   * A tile was drawn.
   *
   * @param seat who drew
   * @param tile its kind
   */
  default void drew(int seat, int tile) {}

  /**
   * A joker was redeemed.
   *
   * @param seat who redeemed
   * @param owner whose exposure it was
   * @param exposure which of the owner's exposures, from 0
   * @param tile the natural given
   */
  default void exchanged(int seat, int owner, int exposure, int tile) {}

  /**
   * A tile was discarded.
   *
   * @param seat who threw it
   * @param tile its kind
   */
  default void discarded(int seat, int tile) {}

  /**
   * A discard was claimed for an exposure.
   *
   * @param seat who got it
   * @param from who threw it
   * @param tile its kind
   * @param laid the exposure
   * @param also mask of seats whose exposure claim lost
   * @param alsoMahjong mask of seats whose mahjong claim lost
   */
  default void claimed(int seat, int from, int tile, Exposure laid, int also, int alsoMahjong) {}

  /**
   * A hand was called dead.
   *
   * @param seat whose hand
   */
  default void died(int seat) {}

  /**
   * A player says what it aims at.
   *
   * @param seat who was asked
   * @param moment when
   * @param line a line's place on the card, or {@link Player#NO_AIM}
   */
  default void aimed(int seat, AimMoment moment, int line) {}

  /**
   * Mahjong was declared.
   *
   * @param seat who won
   * @param by how the hand was completed
   * @param from who threw the winning tile, or -1
   * @param also mask of seats whose exposure claim lost
   * @param alsoMahjong mask of seats whose mahjong claim lost
   */
  default void declared(int seat, WinBy by, int from, int also, int alsoMahjong) {}

  /**
   * The game has ended.
   *
   * @param outcome how
   */
  default void ended(Outcome outcome) {}
}
