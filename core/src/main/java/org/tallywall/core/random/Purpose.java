package org.tallywall.core.random;

/** What random numbers are drawn for. The numbers are fixed for ever: results depend on them. */
public enum Purpose {
  /** Shuffling the wall. */
  WALL(1),
  /** The dice that break the wall. */
  DICE(2),
  /** Which incoming tiles go on in a blind pass. */
  BLIND_PASS(3),
  /** What players decide by chance. */
  DECISION(4),
  /** Playing a game out from a position. */
  ROLLOUT(5),
  /** Resampling deals for intervals. */
  RESAMPLING(6),
  /** Drawing a practice card. */
  CARD(7);

  private final int number;

  Purpose(int number) {
    this.number = number;
  }

  /**
   * The number that stands in the key.
   *
   * @return 1 to 7
   */
  public int number() {
    return number;
  }
}
