package org.tallywall.strategies.habit;

/** The steps of defense, from the own hand to the wall. */
public enum Stance {
  /** Plays its own hand. */
  OWN_HAND("own-hand", "own hand"),
  /** Between tiles it does not need, throws the one that fewest live lines want. */
  CAREFUL("careful", "careful"),
  /** Builds on, but keeps her tiles. */
  HOLD_BACK("hold-back", "holding back"),
  /** Has given the hand up and throws safe tiles only. */
  TO_THE_WALL("to-the-wall", "to the wall"),
  /** One away where a hand one tile further would be given up: holds back again. */
  COMING_BACK("coming-back", "coming back"),
  /** The last draws: one away plays on, everybody else throws safe tiles. */
  LAST_WALL("last-wall", "the last wall");

  private final String text;
  private final String words;

  Stance(String text, String words) {
    this.text = text;
    this.words = words;
  }

  /**
   * The name in studies and results.
   *
   * @return as in hold-back
   */
  public String text() {
    return text;
  }

  /**
   * The step in words for readers.
   *
   * @return as in holding back
   */
  public String words() {
    return words;
  }
}
