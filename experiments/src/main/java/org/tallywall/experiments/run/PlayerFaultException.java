package org.tallywall.experiments.run;

/** A player broke down or answered with an illegal move. */
public final class PlayerFaultException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final long deal;
  private final int seat;
  private final boolean illegal;

  PlayerFaultException(long deal, int seat, boolean illegal, RuntimeException cause) {
    super(cause.getMessage(), cause);
    this.deal = deal;
    this.seat = seat;
    this.illegal = illegal;
  }

  /**
   * The deal in which it happened.
   *
   * @return its number, from 0
   */
  public long deal() {
    return deal;
  }

  /**
   * The player's seat.
   *
   * @return 0 to 3
   */
  public int seat() {
    return seat;
  }

  /**
   * Whether the player answered at all.
   *
   * @return true for an illegal move, which the message explains; false where the player broke down
   */
  public boolean illegal() {
    return illegal;
  }
}
