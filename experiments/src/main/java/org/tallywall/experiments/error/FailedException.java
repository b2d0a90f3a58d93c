package org.tallywall.experiments.error;

/**
 * The work began and failed (exit code 1): the disk is full, a player broke the rules, two results
 * disagree. The message is made for the person at the keyboard.
 */
public final class FailedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * A failure.
   *
   * @param message what failed, where, and what can be done
   */
  public FailedException(String message) {
    super(message);
  }

  /**
   * A failure with the error that lies behind it, which is shown only on request.
   *
   * @param message what failed, where, and what can be done
   * @param cause the error behind it
   */
  public FailedException(String message, Throwable cause) {
    super(message, cause);
  }
}
