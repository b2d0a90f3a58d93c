package org.tallywall.strategies.read;

import org.tallywall.core.rules.ScoreRules;
import org.tallywall.core.rules.TableRules;

/**
 * What rides on a game by the payments of a table (section 8 of the rules): what a win brings, what
 * a hand that comes to nothing loses, and what throwing a winning tile costs.
 *
 * <p>By the usual payments the figures are those of 4,000 games of four {@code reckoner} players on
 * the practice card: a hand without hope ended 40 points below zero, a winning hand 120 above. By
 * other payments both go up and down with what a win moves at that table, the share of wins that
 * the winner draws herself being that of those games. What changes every payment alike, such as the
 * double for no jokers or for the dice, changes no decision and is left out.
 *
 * @param throwing what the thrower pays for one point of the line
 * @param payingAll what she pays for it where she pays for the whole table
 * @param lost points below zero with which a hand without hope ends
 * @param won points above zero with which a winning hand ends
 * @param wallGame points for each player in a wall game
 */
public record Stakes(double throwing, double payingAll, double lost, double won, double wallGame) {
  private static final double USUALLY_LOST = 40;
  private static final double USUALLY_WON = 120;

  /** The share of wins by one's own draw or by an exchange, as counted in games of reckoners. */
  private static final double SELF_DRAWN = 0.42;

  private static final int LOSERS = 3;

  /** What a win moves by the usual payments. */
  private static final double USUALLY_MOVED = moved(2, 1, 2);

  /**
   * How often nobody wins, by the tiles left in the wall: counted in 4,000 games of four {@code
   * watchful} players on the practice card.
   */
  private static final double[] WALL_GAME = {0.70, 0.174, 0.067, 0.046, 0.043};

  /**
   * The stakes at a table.
   *
   * @param rules its rules
   * @return what rides on a game there
   */
  public static Stakes of(TableRules rules) {
    ScoreRules score = rules.score();
    double share = moved(score.discarder(), score.others(), score.selfDrawn()) / USUALLY_MOVED;
    return new Stakes(
        score.discarder(),
        onDiscard(score.discarder(), score.others()),
        USUALLY_LOST * share,
        USUALLY_WON * share,
        score.wallGame());
  }

  /** What all pay together for one point of a line, on the average of all ways to win. */
  private static double moved(int discarder, int others, int selfDrawn) {
    return SELF_DRAWN * LOSERS * selfDrawn + (1 - SELF_DRAWN) * onDiscard(discarder, others);
  }

  private static double onDiscard(int discarder, int others) {
    return discarder + (LOSERS - 1) * others;
  }

  /**
   * What a hand without hope loses if it does not throw the winning tile now.
   *
   * @param wall tiles left in the wall
   * @return points
   */
  public double lost(int wall) {
    return wallGame == 0 ? lost : lost - wallGame * WallColumns.between(WALL_GAME, wall);
  }

  /**
   * What lies between winning and not winning.
   *
   * @param wall tiles left in the wall
   * @return points
   */
  public double between(int wall) {
    return won + lost(wall);
  }
}
