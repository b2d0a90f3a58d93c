package org.tallywall.experiments.design.arms;

import org.tallywall.core.text.FieldReader;

/** Whether the ways of playing of a study share the luck of their decisions. */
public enum Streams {
  /** All meet the same luck, decision by decision. */
  SAME("same"),
  /** Each way has luck of its own in decisions and blind passes; walls and dice stay the same. */
  OWN("own");

  private final String text;

  Streams(String text) {
    this.text = text;
  }

  /**
   * The name in studies.
   *
   * @return as in {@code same}
   */
  public String text() {
    return text;
  }

  /**
   * Reads whether ways of playing share their luck.
   *
   * @param study the study file
   * @return what it says; the same luck where it says nothing
   */
  public static Streams read(FieldReader study) {
    String written = study.text("streams", SAME.text());
    if (written.equals(OWN.text())) {
      return OWN;
    }
    if (!written.equals(SAME.text())) {
      study.fault("streams", "\"streams\" is \"same\" or \"own\", not \"%s\"".formatted(written));
    }
    return SAME;
  }
}
