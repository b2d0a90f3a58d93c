package org.tallywall.experiments.error;

/**
 * Something that the user wrote cannot be used (exit code 2). The message is made for that person:
 * what, where, and what to write instead.
 */
public final class WrongInputException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * A complaint.
   *
   * @param message what is wrong and what to write instead
   */
  public WrongInputException(String message) {
    super(message);
  }
}
