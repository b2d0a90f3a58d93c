package org.tallywall.experiments.run;

/** The memory was used up while a player was asked. */
public final class GreedyPlayerException extends RunEndingPlayerException {
  private static final long serialVersionUID = 1L;

  /**
   * Memory was used up.
   *
   * @param game the game in which it happened
   * @param seat the seat of the player asked, 0 to 3
   * @param cause what the machine threw
   */
  public GreedyPlayerException(GamePlace game, int seat, OutOfMemoryError cause) {
    super("was being asked when the memory was used up", game, seat, cause);
  }
}
