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
  private static final double[] TABLE = table();

  private ChanceTable() {}

  /**
   * The chance.
   *
   * @param needed copies needed, 0 or more; more than six are taken as six
   * @param unseen copies that cannot be seen, 0 to 16
   * @param q chance of each copy to turn up, 0 to 1
   * @return 0 to 1
   */
  static double atLeast(int needed, int unseen, double q) {
    if (needed <= 0) {
      return 1;
    }
    if (needed > unseen) {
      return 0;
    }
    int step = Math.min(STEPS - 1, (int) (q * STEPS));
    return TABLE[index(Math.min(needed, MOST_NEEDED), Math.min(unseen, MOST_UNSEEN), step)];
  }

  private static int index(int needed, int unseen, int step) {
    return (needed * (MOST_UNSEEN + 1) + unseen) * STEPS + step;
  }

  private static double[] table() {
    double[] table = new double[(MOST_NEEDED + 1) * (MOST_UNSEEN + 1) * STEPS];
    for (int step = 0; step < STEPS; step++) {
      double q = (step + 0.5) / STEPS;
      double[] exactly = {1};
      for (int unseen = 0; unseen <= MOST_UNSEEN; unseen++) {
        double below = 0;
        for (int needed = 0; needed <= MOST_NEEDED; needed++) {
          table[index(needed, unseen, step)] = Math.max(0, 1 - below);
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
