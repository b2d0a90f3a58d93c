package org.tallywall.strategies.read;

/**
 * How likely a rack holds enough copies of a kind, jokers standing for some: of {@code unseen}
 * copies each lies on the rack with a chance of its own.
 *
 * <p>The chance, 0.35, is above the quarter of a rack dealt at random, since the rack was built
 * toward a hand, and each joker used halves the weight. Both were set by judgment; with them wins
 * on discards were foreseen better than by counting all live hands alike, in 3,000 games of four
 * {@code reckoner}, but no other values were compared.
 */
final class WaysTable {
  private static final int MOST_NEEDED = 6;
  private static final int MOST_JOKERS = 2;
  private static final int MOST_UNSEEN = 16;
  private static final double HELD = 0.35;
  private static final double JOKER = 0.5;
  private static final double[] TABLE = table();

  private WaysTable() {}

  /**
   * The weight.
   *
   * @param natural copies that must be natural, 0 or more
   * @param open copies for which jokers may stand, 0 or more
   * @param unseen copies that cannot be seen
   * @return 0 or more
   */
  static double weight(int natural, int open, int unseen) {
    int all = Math.min(MOST_NEEDED, natural + open);
    int jokers = Math.min(MOST_JOKERS, Math.min(open, all));
    return TABLE[index(all, jokers, Math.min(MOST_UNSEEN, Math.max(0, unseen)))];
  }

  private static int index(int needed, int jokers, int unseen) {
    return (needed * (MOST_JOKERS + 1) + jokers) * (MOST_UNSEEN + 1) + unseen;
  }

  private static double[] table() {
    double[] table = new double[(MOST_NEEDED + 1) * (MOST_JOKERS + 1) * (MOST_UNSEEN + 1)];
    for (int unseen = 0; unseen <= MOST_UNSEEN; unseen++) {
      for (int needed = 0; needed <= MOST_NEEDED; needed++) {
        double sum = 0;
        double share = 1;
        for (int jokers = 0; jokers <= MOST_JOKERS; jokers++) {
          sum += share * exactly(Math.max(0, needed - jokers), unseen);
          table[index(needed, jokers, unseen)] = sum;
          share *= JOKER;
        }
      }
    }
    return table;
  }

  /** The chance of exactly so many copies, the binomial formula. */
  private static double exactly(int copies, int unseen) {
    if (copies > unseen) {
      return 0;
    }
    double chance = 1;
    for (int at = 0; at < unseen; at++) {
      chance *= at < copies ? HELD * (unseen - at) / (at + 1) : 1 - HELD;
    }
    return chance;
  }
}
