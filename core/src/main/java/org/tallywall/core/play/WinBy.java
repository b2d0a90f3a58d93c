package org.tallywall.core.play;

/** How a hand was completed (rules 3.5.7 and 5.3). */
public enum WinBy {
  /** By the tile drawn. */
  DRAW("draw"),
  /** By a joker exchange. */
  EXCHANGE("exchange"),
  /** By another player's discard. */
  DISCARD("discard"),
  /** East, complete before the first discard. */
  DEAL("deal");

  private final String text;

  WinBy(String text) {
    this.text = text;
  }

  /**
   * The word in records.
   *
   * @return as in draw
   */
  public String text() {
    return text;
  }
}
