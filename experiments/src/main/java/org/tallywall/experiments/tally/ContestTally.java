package org.tallywall.experiments.tally;

/**
 * How the four games of a deal went at one table of a round-robin: deals are counted by how many
 * games each of the four players won in them, so that whole deals can be drawn again.
 */
public final class ContestTally {
  /** Games of a deal. */
  public static final int GAMES = 4;

  /** Players at a table. */
  public static final int PLAYERS = 4;

  private static final int RADIX = GAMES + 1;

  /** Number of patterns, those that cannot be included. */
  public static final int PATTERNS = RADIX * RADIX * RADIX * RADIX;

  private final long[] deals = new long[PATTERNS];

  /** No deals yet. */
  public ContestTally() {}

  /**
   * Counts a deal.
   *
   * @param wins games won by each of the four players, at most four together
   */
  public void addDeal(int[] wins) {
    int pattern = 0;
    for (int player = 0; player < PLAYERS; player++) {
      pattern = pattern * RADIX + wins[player];
    }
    deals[pattern]++;
  }

  /** Carries all numbers out or in. */
  void carry(Carrier carrier) {
    carrier.carry(deals);
  }

  /**
   * Adds the deals of another tally.
   *
   * @param other of the same table
   */
  public void add(ContestTally other) {
    for (int pattern = 0; pattern < PATTERNS; pattern++) {
      deals[pattern] += other.deals[pattern];
    }
  }

  /**
   * Deals that went so.
   *
   * @param pattern 0 to {@link #PATTERNS} − 1
   * @return how many
   */
  public long deals(int pattern) {
    return deals[pattern];
  }

  /**
   * Games that a player won in a deal of a pattern.
   *
   * @param pattern 0 to {@link #PATTERNS} − 1
   * @param player 0 to 3
   * @return 0 to 4
   */
  public static int wins(int pattern, int player) {
    int rest = pattern;
    for (int at = PLAYERS - 1; at > player; at--) {
      rest /= RADIX;
    }
    return rest % RADIX;
  }
}
