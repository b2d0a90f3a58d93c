package org.tallywall.experiments.gauges.calibration;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.SeatView;
import org.tallywall.strategies.hand.RackJudge;

/**
 * What the judge of racks says of its best target before each discard, beside what became of it.
 *
 * <p>The judge says how likely its best target is completed before the wall runs out, if nobody
 * else wins. Two things may happen to it: the player wins with that very hand, or with any hand.
 */
final class HandTally {
  /** Targets up to so many tiles further than the nearest are judged, as the players do. */
  private static final int SLACK = 2;

  private final RackJudge judge;
  private final List<Said> said = new ArrayList<>();
  private final Bins that = new Bins(0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9);
  private final Bins any = new Bins(0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9);
  private final Bins byAway = new Bins(0, 1, 2, 3, 4, 5);
  private final Bins byWall = new Bins(0, 10, 20, 30, 40, 50, 60, 70, 80, 90);

  /** One decision; {@code away} and {@code wall} before it. */
  private record Said(int seat, int hand, double chance, int away, int wall) {}

  /**
   * A tally.
   *
   * @param judge who says it, made as for the players
   */
  HandTally(RackJudge judge) {
    this.judge = judge;
  }

  /**
   * A tile is about to be thrown.
   *
   * @param view what the thrower knows
   */
  void discards(SeatView view) {
    judge.look(view, SLACK, 0);
    int hand = judge.bestHand();
    if (hand >= 0) {
      double chance = judge.bestChance();
      said.add(new Said(view.seat(), hand, chance, judge.least(), view.wallLeft()));
    }
  }

  /**
   * The game has ended.
   *
   * @param outcome how
   */
  void ended(Outcome outcome) {
    Outcome.Win win = outcome.win();
    for (Said one : said) {
      boolean won = win != null && win.seat() == one.seat();
      boolean made = won && win.hand() == one.hand();
      that.note(one.chance(), one.chance(), made);
      any.note(one.chance(), one.chance(), won);
      byAway.note(one.away(), one.chance(), made);
      byWall.note(one.wall(), one.chance(), made);
    }
    said.clear();
    that.endGame();
    any.endGame();
    byAway.endGame();
    byWall.endGame();
  }

  /** Whether the player won with that very hand, by what was said. */
  Bins that() {
    return that;
  }

  /** Whether the player won with any hand, by what was said. */
  Bins any() {
    return any;
  }

  /** Whether the player won with that very hand, by the tiles that the nearest hand lacked. */
  Bins byAway() {
    return byAway;
  }

  /** Whether the player won with that very hand, by the tiles left in the wall. */
  Bins byWall() {
    return byWall;
  }
}
