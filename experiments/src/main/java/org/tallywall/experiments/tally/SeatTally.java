package org.tallywall.experiments.tally;

/** What one seat, or all four together, made of its games. */
public final class SeatTally {
  /** What is counted. The first six add up to all games. */
  public enum Count {
    /** Won on a tile drawn, by an exchange, or complete before play. */
    WON_ON_OWN_DRAW,
    /** Won on another player's discard. */
    WON_ON_DISCARD,
    /** Threw the tile on which another player won. */
    THREW,
    /** Somebody else won, not on this seat's discard. */
    ONLY_PAID,
    /** Nobody won before the wall ran out. */
    WALL_GAME,
    /** Three hands were dead. */
    VOID,
    /** Won in a game in which it had redeemed a joker. */
    WON_AFTER_REDEEMING,
    /** Won with a hand that was paid as jokerless. */
    WON_JOKERLESS,
    /** Was one away from a line at some time, or won. */
    ONE_AWAY,
    /** Tiles left in the wall, summed over the games won. */
    WALL_AT_WIN,
    /** Jokers in the winning hands. */
    JOKERS_AT_WIN,
    /** Exposures made in all games. */
    EXPOSURES,
    /** Jokers redeemed in all games. */
    EXCHANGES
  }

  private final Counts<Count> counts = new Counts<>(Count.class);
  private final DealSums wins = new DealSums();
  private final DealSums points = new DealSums();

  /** No games yet. */
  public SeatTally() {}

  /** Carries all numbers out or in. */
  void carry(Carrier carrier) {
    counts.carry(carrier);
    wins.carry(carrier);
    points.carry(carrier);
  }

  /**
   * Adds the games of another tally.
   *
   * @param other the other tally
   */
  public void add(SeatTally other) {
    counts.add(other.counts);
    wins.add(other.wins);
    points.add(other.points);
  }

  /**
   * The plain counts.
   *
   * @return live counts
   */
  public Counts<Count> counts() {
    return counts;
  }

  /**
   * Games won, as a number a deal.
   *
   * @return live sums
   */
  public DealSums wins() {
    return wins;
  }

  /**
   * Points, as a number a deal.
   *
   * @return live sums
   */
  public DealSums points() {
    return points;
  }
}
