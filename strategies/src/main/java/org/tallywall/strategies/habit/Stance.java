package org.tallywall.strategies.habit;

/** The steps of defence, from the own hand to the wall. */
public enum Stance {
  /** Plays its own hand. */
  OWN_HAND("own-hand"),
  /** Between tiles it does not need, throws the one that fewest live lines want. */
  CAREFUL("careful"),
  /** Builds on, but keeps her tiles. */
  HOLD_BACK("hold-back"),
  /** Has given the hand up and throws safe tiles only. */
  TO_THE_WALL("to-the-wall"),
  /** The last draws: one away plays on, everybody else throws safe tiles. */
  LAST_WALL("last-wall");

  private final String text;

  Stance(String text) {
    this.text = text;
  }

  /**
   * The name in studies and results.
   *
   * @return as in hold-back
   */
  public String text() {
    return text;
  }
}
