package org.tallywall.core.play;

/** A player answered with a move that the rules do not allow. */
public final class IllegalMoveException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int seat;

  /**
   * An illegal move.
   *
   * @param seat who made it
   * @param message what was answered and why it is not legal
   */
  public IllegalMoveException(int seat, String message) {
    super(message);
    this.seat = seat;
  }

  /**
   * Who made it.
   *
   * @return 0 to 3
   */
  public int seat() {
    return seat;
  }
}
