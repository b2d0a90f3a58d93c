package org.tallywall.experiments.run;

/** A player took longer for a decision than the study allows. */
public final class SlowPlayerException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient GamePlace game;
  private final int seat;

  SlowPlayerException(GamePlace game, int seat) {
    super("no answer within the time allowed");
    this.game = game;
    this.seat = seat;
  }

  /**
   * The game in which it happened.
   *
   * @return which one
   */
  public GamePlace game() {
    return game;
  }

  /**
   * The player's seat.
   *
   * @return 0 to 3
   */
  public int seat() {
    return seat;
  }
}
