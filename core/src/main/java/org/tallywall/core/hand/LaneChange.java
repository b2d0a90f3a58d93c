package org.tallywall.core.hand;

/**
 * What some tiles gained and lost change in one row of {@link Lanes}. A tile gained and one lost
 * are worked in together, in one sweep. Not safe for use by several threads.
 */
final class LaneChange {
  private static final int MOST = 3 * Long.SIZE;

  private final long[][] more = new long[MOST][];
  private final long[][] less = new long[MOST][];
  private int adding;
  private int taking;

  /** No change. */
  LaneChange() {}

  /**
   * Numbers to be added.
   *
   * @param lanes the numbers, or null for none
   */
  void add(long[] lanes) {
    if (lanes != null) {
      more[adding++] = lanes;
    }
  }

  /**
   * Numbers to be taken off.
   *
   * @param lanes the numbers, or null for none
   */
  void subtract(long[] lanes) {
    if (lanes != null) {
      less[taking++] = lanes;
    }
  }

  /**
   * Works all changes in and forgets them.
   *
   * @param row changed in place
   * @param words how many words to change
   */
  void apply(long[] row, int words) {
    while (adding > 0 && taking > 0) {
      Lanes.exchange(row, more[--adding], less[--taking], words);
    }
    while (adding > 0) {
      Lanes.add(row, more[--adding], words);
    }
    while (taking > 0) {
      Lanes.subtract(row, less[--taking], words);
    }
  }
}
