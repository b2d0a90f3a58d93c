package org.tallywall.core.play;

/** What a player does next in a turn. Choices are ready made: no object is created. */
public sealed interface TurnChoice {
  /**
   * Gives a natural for a joker of an exposure that shows the same kind (rule 4.4).
   *
   * @param owner the seat whose exposure it is
   * @param exposure which of the owner's exposures, from 0 in the order made
   */
  record Exchange(int owner, int exposure) implements TurnChoice {}

  /**
   * Declares mahjong.
   *
   * @param line the line named, or {@link ClaimChoice.Mahjong#BEST_LINE}
   */
  record Mahjong(int line) implements TurnChoice {}

  /**
   * Discards a tile, which ends the turn.
   *
   * @param tile its kind
   */
  record Discard(int tile) implements TurnChoice {}

  /**
   * Giving a natural for a joker.
   *
   * @param owner the seat whose exposure it is
   * @param exposure which of the owner's exposures, 0 to 3
   * @return the choice
   */
  static TurnChoice exchange(int owner, int exposure) {
    return TurnChoices.EXCHANGE[owner][exposure];
  }

  /**
   * Declaring mahjong on the line that pays most.
   *
   * @return the choice
   */
  static TurnChoice mahjong() {
    return TurnChoices.MAHJONG;
  }

  /**
   * Discarding a tile.
   *
   * @param tile its kind, 0 to 35
   * @return the choice
   */
  static TurnChoice discard(int tile) {
    return TurnChoices.DISCARD[tile];
  }
}
