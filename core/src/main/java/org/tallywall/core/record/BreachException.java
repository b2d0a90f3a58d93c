package org.tallywall.core.record;

/** Ends the check of a record at the first breach. */
final class BreachException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  BreachException(String message) {
    super(message, null, false, false);
  }

  static void require(boolean good, String message) {
    if (!good) {
      throw new BreachException(message);
    }
  }
}
