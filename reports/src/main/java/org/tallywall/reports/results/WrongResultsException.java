package org.tallywall.reports.results;

/**
 * Results that cannot be used. The message is made for the person who asked for them: which file,
 * where in it, and what can be done.
 */
public final class WrongResultsException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * A complaint.
   *
   * @param message what is wrong and what can be done
   */
  public WrongResultsException(String message) {
    super(message);
  }
}
