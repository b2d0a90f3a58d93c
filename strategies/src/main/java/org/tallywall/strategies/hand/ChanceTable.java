package org.tallywall.strategies.hand;

/**
 * Chances to find enough copies of a kind: of {@code unseen} copies each turns up with chance
 * {@code q}, independently, and at least {@code needed} must. Worked out once by adding and
 * multiplying alone, so that every machine has the same numbers.
 */
final class ChanceTable {
  private static final int MOST_NEEDED = 6;
  private static final int MOST_UNSEEN = 16;
  private static final int STEPS = 128;
  private static final int ROW = (MOST_NEEDED + 1) * (MOST_UNSEEN + 1);
  private static final double[] TABLE = table();

  private ChanceTable() {}

  /**
   * The part of the table that belongs to a chance, so that it need be found only once.
   *
   * @param q chance of each copy to turn up, 0 to 1
   * @return a row for {@link #atLeast(int, int, int)}
   */
  static int row(double q) {
    return Math.min(STEPS - 1, (int) (q * STEPS)) * ROW;
  }

  /**
   * The chance.
   *
   * @param needed copies needed, 0 or more; more than six are taken as six
   * @param unseen copies that cannot be seen, 0 or more; more than 16 are taken as 16
   * @param row what {@link #row} says of the chance of each copy to turn up
   * @return 0 to 1
   */
  static double atLeast(int needed, int unseen, int row) {
    if (needed > unseen) {
      return 0;
    }
    return TABLE[row + index(Math.min(needed, MOST_NEEDED), Math.min(unseen, MOST_UNSEEN))];
  }

  private static int index(int needed, int unseen) {
    return needed * (MOST_UNSEEN + 1) + unseen;
  }

  private static double[] table() {
    double[] table = new double[STEPS * ROW];
    for (int step = 0; step < STEPS; step++) {
      double q = (step + 0.5) / STEPS;
      double[] exactly = {1};
      for (int unseen = 0; unseen <= MOST_UNSEEN; unseen++) {
        double below = 0;
        for (int needed = 0; needed <= MOST_NEEDED; needed++) {
          table[step * ROW + index(needed, unseen)] = Math.max(0, 1 - below);
          below += needed < exactly.length ? exactly[needed] : 0;
        }
        exactly = oneMore(exactly, q);
      }
    }
    return table;
  }

  private static double[] oneMore(double[] exactly, double q) {
    double[] next = new double[exactly.length + 1];
    for (int found = 0; found < exactly.length; found++) {
      next[found] += exactly[found] * (1 - q);
      next[found + 1] += exactly[found] * q;
    }
    return next;
  }
}
