package org.tallywall.experiments.review;

/** A sheet asks about a moment that the rules of the table do not have; the message says why. */
public final class NoSuchMomentException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private static final String BY_RULES = "by these rules ";

  private NoSuchMomentException(String message, Throwable cause) {
    super(message, cause);
  }

  /** What the game said of the moment; anything else that was thrown stays what it is. */
  static RuntimeException of(IllegalArgumentException refused) {
    String message = String.valueOf(refused.getMessage());
    return message.startsWith(BY_RULES)
        ? new NoSuchMomentException("this moment does not come up: " + message, refused)
        : refused;
  }
}
