package org.tallywall.experiments.run;

/** A player broke down or answered with an illegal move. */
public final class PlayerFaultException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient SpoiledDeal fault;

  /**
   * A fault.
   *
   * @param fault what happened, and where
   * @param cause what the player threw, or null where that is not known any more
   */
  public PlayerFaultException(SpoiledDeal fault, Throwable cause) {
    super(fault.what(), cause);
    this.fault = fault;
  }

  /**
   * What happened, and where.
   *
   * @return the fault
   */
  public SpoiledDeal fault() {
    return fault;
  }
}
