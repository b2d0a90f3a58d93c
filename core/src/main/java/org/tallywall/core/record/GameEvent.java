package org.tallywall.core.record;

import java.util.List;

/**
 * One thing that happened at the table, as a record writes it. Seats are 0 to 3, tiles are kinds.
 */
public sealed interface GameEvent {
  /**
   * One player's part of a pass.
   *
   * @param step the pass, as in right-1
   * @param from who passed
   * @param to who received
   * @param own kinds set out from the passer's rack
   * @param forwarded kinds that went on unseen
   */
  record Pass(String step, int from, int to, List<Integer> own, List<Integer> forwarded)
      implements GameEvent {}

  /**
   * The stop question.
   *
   * @param seats all who stopped, ascending
   */
  record Stop(List<Integer> seats) implements GameEvent {}

  /**
   * The courtesy pass of two opposite seats.
   *
   * @param seats the two seats
   * @param asked the two numbers
   * @param tiles what each gave
   */
  record Courtesy(List<Integer> seats, List<Integer> asked, List<List<Integer>> tiles)
      implements GameEvent {}

  /**
   * A draw.
   *
   * @param seat who drew
   * @param tile the tile
   */
  record Draw(int seat, int tile) implements GameEvent {}

  /**
   * A joker exchange.
   *
   * @param seat who redeemed
   * @param owner whose exposure
   * @param exposure which of the owner's exposures, from 0
   * @param tile the natural given
   */
  record Exchange(int seat, int owner, int exposure, int tile) implements GameEvent {}

  /**
   * A discard.
   *
   * @param seat who threw it
   * @param tile the tile
   */
  record Discard(int seat, int tile) implements GameEvent {}

  /**
   * A claim for an exposure.
   *
   * @param seat who got the tile
   * @param from who threw it
   * @param tile the tile
   * @param kind the kind shown; differs from the tile only where a joker was claimed
   * @param size number of tiles of the group
   * @param jokers jokers from the claimant's rack
   * @param losers whose claims lost
   */
  record Claim(int seat, int from, int tile, int kind, int size, int jokers, Losers losers)
      implements GameEvent {}

  /**
   * A hand called dead.
   *
   * @param seat whose
   */
  record Dead(int seat) implements GameEvent {}

  /**
   * Mahjong.
   *
   * @param seat who won
   * @param by how, as in draw
   * @param from who threw the winning tile, or -1
   * @param losers whose claims lost
   */
  record Mahjong(int seat, String by, int from, Losers losers) implements GameEvent {}

  /** The wall ran out. */
  record WallGame() implements GameEvent {}

  /** Three hands were dead. */
  record VoidGame() implements GameEvent {}

  /**
   * Whose claims of a tile lost.
   *
   * @param exposures seats whose exposure claim lost, ascending
   * @param mahjongs seats whose mahjong claim lost, ascending
   */
  record Losers(List<Integer> exposures, List<Integer> mahjongs) {
    /** Nobody's. */
    static final Losers NOBODY = new Losers(List.of(), List.of());
  }
}
