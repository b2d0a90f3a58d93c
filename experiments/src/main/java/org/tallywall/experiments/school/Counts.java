package org.tallywall.experiments.school;

import java.math.BigInteger;
import org.tallywall.experiments.stats.Moments;

/** How many decisions of each kind each of some games held, all four players together. */
public final class Counts {
  private final int[][] ofKind;
  private final int games;

  /**
   * Counts.
   *
   * @param ofKind decisions by the place of the kind and by deal
   */
  Counts(int[][] ofKind) {
    this.ofKind = ofKind;
    this.games = ofKind[0].length;
  }

  /**
   * How many games were counted.
   *
   * @return 1 or more
   */
  public int games() {
    return games;
  }

  /** How many of a kind a deal held. */
  int of(Kind kind, int deal) {
    return ofKind[kind.ordinal()][deal];
  }

  /** How many games held a decision of a kind. */
  int gamesWith(Kind kind) {
    int with = 0;
    for (int count : ofKind[kind.ordinal()]) {
      with += count > 0 ? 1 : 0;
    }
    return with;
  }

  /**
   * How many decisions of a kind a game holds.
   *
   * @param kind the kind
   * @return their moments, with the games as units
   */
  public Moments of(Kind kind) {
    long sum = 0;
    long squares = 0;
    for (int count : ofKind[kind.ordinal()]) {
      sum += count;
      squares += (long) count * count;
    }
    return new Moments(games, BigInteger.valueOf(sum), BigInteger.valueOf(squares));
  }
}
