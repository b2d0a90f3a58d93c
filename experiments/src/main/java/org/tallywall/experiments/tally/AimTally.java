package org.tallywall.experiments.tally;

/** What became of the players that aimed at one line of the card, or at the lines of one family. */
public final class AimTally {
  /** What is counted. */
  public enum Count {
    /** Players that aimed at it after the deal. */
    AFTER_DEAL,
    /** Players that aimed at it after the passes. */
    AFTER_PASSES,
    /** Players that aimed at it when the game ended. */
    AT_END,
    /** Players that aimed at it after the passes and won, with whatever line. */
    AIMED_AND_WON,
    /** Players that aimed at it after the passes and won with it. */
    AIMED_AND_WON_WITH_IT,
    /** Sum over deals of the squares of {@link #AIMED_AND_WON_WITH_IT}'s number in the deal. */
    WON_WITH_IT_SQUARED,
    /** Sum over deals of {@link #AIMED_AND_WON_WITH_IT} times {@link #AFTER_PASSES} in the deal. */
    WON_WITH_IT_TIMES_AIMED,
    /** Sum over deals of the squares of {@link #AIMED_AND_WON}'s number in the deal. */
    WON_SQUARED,
    /** Sum over deals of {@link #AIMED_AND_WON} times {@link #AFTER_PASSES} in the deal. */
    WON_TIMES_AIMED,
    /** Sum over deals of the squares of {@link #AFTER_PASSES}'s number in the deal. */
    AIMED_SQUARED,
    /** Times that a player changed to it in play. */
    SWITCHED_TO,
    /** Times that a player left it in play. */
    SWITCHED_FROM,
    /** Games won with it. */
    WINS,
    /** Tiles left in the wall, summed over these games. */
    WALL,
    /** Jokers in the hands won with. */
    JOKERS,
    /** Exposures of the winners. */
    EXPOSURES,
    /** Points of the winners. */
    POINTS
  }

  private final Counts<Count> counts = new Counts<>(Count.class);
  private int aimersInDeal;
  private int winnersInDeal;
  private int winnersWithItInDeal;

  /** Nothing counted yet. */
  public AimTally() {}

  /** Carries all numbers out or in. */
  void carry(Carrier carrier) {
    counts.carry(carrier);
  }

  /**
   * Adds the games of another tally.
   *
   * @param other the other tally
   */
  public void add(AimTally other) {
    counts.add(other.counts);
  }

  /**
   * The plain counts.
   *
   * @return live counts
   */
  public Counts<Count> counts() {
    return counts;
  }

  /** Notes, at the end of a game, a player that aimed at it after the passes. */
  void aimed(boolean won, boolean wonWithIt) {
    aimersInDeal++;
    winnersInDeal += won ? 1 : 0;
    winnersWithItInDeal += wonWithIt ? 1 : 0;
  }

  /** Ends a deal: from now on the next is counted. */
  void endDeal() {
    if (aimersInDeal > 0) {
      counts.add(Count.AFTER_PASSES, aimersInDeal);
      counts.add(Count.AIMED_AND_WON, winnersInDeal);
      counts.add(Count.WON_SQUARED, (long) winnersInDeal * winnersInDeal);
      counts.add(Count.WON_TIMES_AIMED, (long) winnersInDeal * aimersInDeal);
      counts.add(Count.AIMED_SQUARED, (long) aimersInDeal * aimersInDeal);
      counts.add(Count.AIMED_AND_WON_WITH_IT, winnersWithItInDeal);
      counts.add(Count.WON_WITH_IT_SQUARED, (long) winnersWithItInDeal * winnersWithItInDeal);
      counts.add(Count.WON_WITH_IT_TIMES_AIMED, (long) winnersWithItInDeal * aimersInDeal);
      aimersInDeal = 0;
      winnersInDeal = 0;
      winnersWithItInDeal = 0;
    }
  }
}
