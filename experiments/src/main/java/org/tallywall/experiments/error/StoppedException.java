package org.tallywall.experiments.error;

/** The user stopped the work with Ctrl-C (exit code 130). */
public final class StoppedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * A stop.
   *
   * @param message how far the work had come
   */
  public StoppedException(String message) {
    super(message);
  }
}
