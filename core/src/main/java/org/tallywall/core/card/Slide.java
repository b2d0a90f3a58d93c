package org.tallywall.core.card;

/** How the digits of a hand may move together. */
public enum Slide {
  /** The digits are fixed. */
  NONE("none", 0),
  /** All digits move by the same step while they stay within 1 to 9. */
  ANY("any", 1),
  /** All digits move in steps of two, so odd stays odd and even stays even. */
  BY_TWO("by-two", 2);

  private final String text;
  private final int step;

  Slide(String text, int step) {
    this.text = text;
    this.step = step;
  }

  /**
   * The word of the card file.
   *
   * @return none, any or by-two
   */
  public String text() {
    return text;
  }

  /**
   * The smallest move.
   *
   * @return 0, 1 or 2
   */
  int step() {
    return step;
  }
}
