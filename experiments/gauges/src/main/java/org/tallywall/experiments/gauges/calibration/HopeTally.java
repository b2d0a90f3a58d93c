package org.tallywall.experiments.gauges.calibration;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.SeatView;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.hand.WinHope;

/**
 * How likely a seat is said to win by what the rest of its rack is worth ({@link WinHope}), before
 * each discard, beside whether it did.
 */
final class HopeTally {
  private static final int SLACK = 2;

  private final RackJudge judge;
  private final WinHope hope = new WinHope();
  private final List<Said> said = new ArrayList<>();
  private final Bins won = new Bins(0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9);

  private record Said(int seat, double chance) {}

  /**
   * A tally.
   *
   * @param judge who says what a rack is worth, made as for the players
   */
  HopeTally(RackJudge judge) {
    this.judge = judge;
  }

  /**
   * A tile is about to be thrown.
   *
   * @param view what the thrower knows
   * @param tile the tile
   */
  void discards(SeatView view, int tile) {
    judge.look(view, SLACK, 0);
    hope.look(view);
    said.add(new Said(view.seat(), hope.chance(judge.worthWithout(tile))));
  }

  /**
   * The game has ended.
   *
   * @param outcome how
   */
  void ended(Outcome outcome) {
    int winner = outcome.win() == null ? -1 : outcome.win().seat();
    for (Said one : said) {
      won.note(one.chance(), one.chance(), one.seat() == winner);
    }
    said.clear();
    won.endGame();
  }

  /** Whether the seat won, by what was said. */
  Bins won() {
    return won;
  }
}
