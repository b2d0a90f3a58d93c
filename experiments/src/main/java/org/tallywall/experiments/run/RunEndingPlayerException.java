package org.tallywall.experiments.run;

/**
 * A player did something after which a run cannot go on; no study can bear it. The message is what
 * it did, in words that follow the player's name.
 */
public abstract class RunEndingPlayerException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient GamePlace game;
  private final int seat;

  /**
   * The end of a run.
   *
   * @param message what the player did, in words that follow its name
   * @param game the game in which it happened
   * @param seat the seat of the player that was asked, 0 to 3
   * @param cause what the machine threw, or null
   */
  RunEndingPlayerException(String message, GamePlace game, int seat, Throwable cause) {
    super(message, cause);
    this.game = game;
    this.seat = seat;
  }

  /**
   * The game in which it happened.
   *
   * @return which one
   */
  public final GamePlace game() {
    return game;
  }

  /**
   * The seat of the player that was asked.
   *
   * @return 0 to 3
   */
  public final int seat() {
    return seat;
  }
}
