package org.tallywall.experiments.study;

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
}
