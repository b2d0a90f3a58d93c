package org.tallywall.experiments.tally;

/** How games ended, by the number of tiles left in the wall. */
public final class EndTally {
  /** How a game ended. */
  public enum End {
    /** Won on the tile drawn. */
    DRAW,
    /** Won by a joker exchange. */
    EXCHANGE,
    /** Won on a discard. */
    DISCARD,
    /** East was complete before play. */
    DEAL,
    /** The wall ran out. */
    WALL_GAME,
    /** Three hands were dead. */
    VOID
  }

  private final long[][] games;

  /**
   * No games yet.
   *
   * @param most the most tiles that can be left in the wall, 99 with the usual tiles
   */
  public EndTally(int most) {
    this.games = new long[most + 1][End.values().length];
  }

  /**
   * Counts a game.
   *
   * @param end how it ended
   * @param wall tiles left
   */
  void add(End end, int wall) {
    games[wall][end.ordinal()]++;
  }

  /** Carries all numbers out or in. */
  void carry(Carrier carrier) {
    for (long[] byWall : games) {
      carrier.carry(byWall);
    }
  }

  /**
   * Adds the games of another tally.
   *
   * @param other a tally of the same size
   */
  public void add(EndTally other) {
    for (int wall = 0; wall < games.length; wall++) {
      for (int end = 0; end < games[wall].length; end++) {
        games[wall][end] += other.games[wall][end];
      }
    }
  }

  /**
   * The most tiles that can be left.
   *
   * @return 99 with the usual tiles
   */
  public int most() {
    return games.length - 1;
  }

  /**
   * Games that ended so.
   *
   * @param end how
   * @param wall tiles left
   * @return how many
   */
  public long games(End end, int wall) {
    return games[wall][end.ordinal()];
  }
}
