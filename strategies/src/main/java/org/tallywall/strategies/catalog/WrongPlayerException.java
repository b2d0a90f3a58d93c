package org.tallywall.strategies.catalog;

/** A player that was named cannot be had; the message says why and what to write instead. */
public final class WrongPlayerException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * A player that cannot be had.
   *
   * @param message what is wrong and what to do
   */
  public WrongPlayerException(String message) {
    super(message);
  }

  /**
   * A player that cannot be had because something broke.
   *
   * @param message what is wrong and what to do
   * @param cause what was thrown
   */
  public WrongPlayerException(String message, Throwable cause) {
    super(message, cause);
  }
}
