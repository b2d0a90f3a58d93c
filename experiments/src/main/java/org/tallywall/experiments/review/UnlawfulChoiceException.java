package org.tallywall.experiments.review;

import org.tallywall.core.text.Shown;

/** A choice that somebody named and that cannot be reviewed; the message says why. */
public final class UnlawfulChoiceException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  UnlawfulChoiceException(String choice, String why) {
    super("\"" + Shown.word(choice) + "\": " + why);
  }
}
