package org.tallywall.experiments.tally;

import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.WinBy;

/** Says where a game goes in the tally of a seat: to exactly one of six counts. */
final class SeatCounts {
  private SeatCounts() {}

  static SeatTally.Count of(int seat, Outcome outcome) {
    return switch (outcome.how()) {
      case WALL_GAME -> SeatTally.Count.WALL_GAME;
      case VOID -> SeatTally.Count.VOID;
      case MAHJONG -> ofWin(seat, outcome.win());
    };
  }

  private static SeatTally.Count ofWin(int seat, Outcome.Win win) {
    if (win.seat() == seat) {
      return win.by() == WinBy.DISCARD
          ? SeatTally.Count.WON_ON_DISCARD
          : SeatTally.Count.WON_ON_OWN_DRAW;
    }
    return win.from() == seat ? SeatTally.Count.THREW : SeatTally.Count.ONLY_PAID;
  }
}
