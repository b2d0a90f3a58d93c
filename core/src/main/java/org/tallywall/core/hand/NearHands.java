package org.tallywall.core.hand;

/** Hands found near a rack, with their distances. It is filled anew at each search. */
public final class NearHands {
  private int[] index = new int[0];
  private int[] away = new int[0];
  private int count;
  private int least;

  /** Nothing found yet. */
  public NearHands() {}

  /**
   * Forgets what was found.
   *
   * @param most the most that may be added
   */
  void clear(int most) {
    if (index.length < most) {
      index = new int[most];
      away = new int[most];
    }
    count = 0;
    least = HandMeter.NONE;
  }

  /**
   * Adds a hand.
   *
   * @param hand its index in the reach
   * @param distance how far it is
   */
  void add(int hand, int distance) {
    index[count] = hand;
    away[count++] = distance;
  }

  /**
   * Keeps the hands within a distance.
   *
   * @param best the least distance
   * @param slack how much further a hand may be
   */
  void keep(int best, int slack) {
    int kept = 0;
    for (int at = 0; at < count; at++) {
      if (away[at] <= best + slack) {
        index[kept] = index[at];
        away[kept++] = away[at];
      }
    }
    count = kept;
    least = best;
  }

  /**
   * How many hands were found.
   *
   * @return 0 where no living hand is possible
   */
  public int count() {
    return count;
  }

  /**
   * The least distance.
   *
   * @return 0 to 14, or {@link HandMeter#NONE} where nothing was found
   */
  public int least() {
    return least;
  }

  /**
   * One of the hands, in the order of the card.
   *
   * @param at from 0
   * @return its index in the reach
   */
  public int hand(int at) {
    return index[at];
  }

  /**
   * How far one of the hands is.
   *
   * @param at from 0
   * @return its distance
   */
  public int away(int at) {
    return away[at];
  }
}
