package org.tallywall.experiments.design.roundrobin;

import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Proportion;

/**
 * The limits of a player's share of games where it hardly ever won or never did. The deals in which
 * it won are a count of which the exact limits are known (Clopper and Pearson, Biometrika 26, 1934,
 * 404–413); each of them holds one win of four at least, and the next one may hold four.
 *
 * @param deals deals that the player played
 * @param won deals in which it won
 * @param wins games that it won
 */
record RareWins(long deals, long won, long wins) {
  private static final double GAMES = 4;

  /** Limits of the share of games won, within 0 and 1. */
  Interval share(double confidence) {
    Interval limits = new Proportion(won, deals).clopperPearson(confidence);
    double most = (wins + GAMES) / (won + 1) / GAMES;
    return new Interval(limits.low() / GAMES, limits.high() * most);
  }
}
