package org.tallywall.experiments.tally;

import org.tallywall.core.play.Outcome;
import org.tallywall.experiments.study.Measure;

/** What one seat made of one game. It is used again for the next game. */
public final class SeatGame {
  private SeatTally.Count went;
  private long points;
  private boolean oneAway;
  private int exposures;
  private int exchanges;
  private boolean jokerless;

  SeatGame() {}

  void end(int seat, Outcome outcome, boolean reachedOneAway, int exposed, int exchanged) {
    went = SeatCounts.of(seat, outcome);
    points = outcome.points().get(seat);
    oneAway = reachedOneAway || won();
    exposures = exposed;
    exchanges = exchanged;
    jokerless = won() && outcome.win().jokerless();
  }

  /** Where the game goes in the tally of the seat. */
  SeatTally.Count went() {
    return went;
  }

  long points() {
    return points;
  }

  boolean oneAway() {
    return oneAway;
  }

  int exposures() {
    return exposures;
  }

  int exchanges() {
    return exchanges;
  }

  boolean won() {
    return went == SeatTally.Count.WON_ON_OWN_DRAW || went == SeatTally.Count.WON_ON_DISCARD;
  }

  /**
   * The number that a measure counts in this game.
   *
   * @param measure the measure
   * @return points, or 1 where what the measure names has happened and else 0
   */
  public long value(Measure measure) {
    return switch (measure) {
      case POINTS -> points;
      case WIN_RATE -> one(won());
      case THREW_THE_WINNING_TILE -> one(went == SeatTally.Count.THREW);
      case WALL_GAMES -> one(went == SeatTally.Count.WALL_GAME);
      case WON_ON_OWN_DRAW -> one(went == SeatTally.Count.WON_ON_OWN_DRAW);
      case WON_ON_DISCARD -> one(went == SeatTally.Count.WON_ON_DISCARD);
      case ONE_AWAY_REACHED -> one(oneAway);
      case ONLY_PAID -> one(went == SeatTally.Count.ONLY_PAID);
      case WON_AFTER_REDEEMING -> one(won() && exchanges > 0);
      case WON_JOKERLESS -> one(jokerless);
      case EXPOSURES -> exposures;
      case EXCHANGES -> exchanges;
    };
  }

  private static long one(boolean happened) {
    return happened ? 1 : 0;
  }
}
