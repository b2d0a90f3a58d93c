package org.tallywall.core.play;

/** The four seats: 0 is East, and turns go to the right (rule 1.4.1). */
public final class Seats {
  /** Number of seats. */
  public static final int COUNT = 4;

  /** East's seat. */
  public static final int EAST = 0;

  private Seats() {}

  /**
   * The seat to the right, whose turn is next.
   *
   * @param seat 0 to 3
   * @return 0 to 3
   */
  public static int right(int seat) {
    return seat + 1 & 3;
  }

  /**
   * The opposite seat.
   *
   * @param seat 0 to 3
   * @return 0 to 3
   */
  public static int across(int seat) {
    return seat + 2 & 3;
  }

  /**
   * The seat to the left.
   *
   * @param seat 0 to 3
   * @return 0 to 3
   */
  public static int left(int seat) {
    return seat + 3 & 3;
  }
}
