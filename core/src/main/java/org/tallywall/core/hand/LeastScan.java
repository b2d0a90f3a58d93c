package org.tallywall.core.hand;

/**
 * Finds the least distance of a rack over all rows of a {@link Reach}.
 *
 * <p>There are two loops with the same result. The straight one is turned into vector instructions
 * by compilers that can count bits in vectors; on Java 25 it took half the time of the other. Java
 * 17 cannot, and there the loop that skips the second half of a row when the first rules it out was
 * more than twice as fast. Which one runs depends on the version of Java alone, never on a clock.
 */
final class LeastScan {
  private static final int FIRST_WITH_VECTOR_COUNTS = 25;
  private static final boolean STRAIGHT = Runtime.version().feature() >= FIRST_WITH_VECTOR_COUNTS;

  private LeastScan() {}

  /**
   * The least distance below a bound.
   *
   * @param reach the rows
   * @param rack the natural tiles held
   * @param enough tiles wanted less the jokers held
   * @param below only smaller distances count
   * @return the least distance if it is below the bound, else the bound
   */
  static int least(Reach reach, TileBits rack, int enough, int below) {
    return STRAIGHT ? straight(reach, rack, enough, below) : skipping(reach, rack, enough, below);
  }

  static int straight(Reach reach, TileBits rack, int enough, int below) {
    long[] need0 = reach.need0;
    long[] need1 = reach.need1;
    long[] need2 = reach.need2;
    long[] strict0 = reach.strict0;
    long[] strict1 = reach.strict1;
    long[] strict2 = reach.strict2;
    long held0 = rack.w0;
    long held1 = rack.w1;
    long held2 = rack.w2;
    int best = below;
    for (int at = 0; at < need0.length; at++) {
      int lacking =
          enough
              - Long.bitCount(need0[at] & held0)
              - Long.bitCount(need1[at] & held1)
              - Long.bitCount(need2[at] & held2);
      int missing =
          Long.bitCount(strict0[at] & ~held0)
              + Long.bitCount(strict1[at] & ~held1)
              + Long.bitCount(strict2[at] & ~held2);
      best = Math.min(best, Math.max(lacking, missing));
    }
    return best;
  }

  static int skipping(Reach reach, TileBits rack, int enough, int below) {
    long[] need0 = reach.need0;
    long[] need1 = reach.need1;
    long[] need2 = reach.need2;
    long held0 = rack.w0;
    long held1 = rack.w1;
    long held2 = rack.w2;
    int best = below;
    for (int at = 0; at < need0.length; at++) {
      int lacking =
          enough
              - Long.bitCount(need0[at] & held0)
              - Long.bitCount(need1[at] & held1)
              - Long.bitCount(need2[at] & held2);
      if (lacking < best) {
        int missing =
            Long.bitCount(reach.strict0[at] & ~held0)
                + Long.bitCount(reach.strict1[at] & ~held1)
                + Long.bitCount(reach.strict2[at] & ~held2);
        best = Math.min(best, Math.max(lacking, missing));
      }
    }
    return best;
  }
}
