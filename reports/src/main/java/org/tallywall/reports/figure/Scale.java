package org.tallywall.reports.figure;

/** What the numbers along an axis are. */
public enum Scale {
  /** How much of something there is. */
  LEVEL(Sign.MINUS_ONLY),
  /** How much more or less there is than with something else; 0 is marked. */
  DIFFERENCE(Sign.PLUS_AND_MINUS);

  private final Sign sign;

  Scale(Sign sign) {
    this.sign = sign;
  }

  /**
   * Tells how numbers on this scale are signed.
   *
   * @return with a plus for differences
   */
  public Sign sign() {
    return sign;
  }
}
