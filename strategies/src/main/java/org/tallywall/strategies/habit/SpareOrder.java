package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.read.CardUse;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * In which order tiles go that the hand does not need, while nobody has to be feared: what has just
 * gone round, and early those that will be dangerous later.
 */
final class SpareOrder {
  private static final Setting<Boolean> REPEAT =
      Setting.onOff("discards.repeat-just-thrown")
          .usual(false)
          .says(
              "among tiles it does not need, throws what just went around unclaimed (\"what was "
                  + "just thrown can be thrown again\")");
  private static final Setting<Integer> DANGEROUS =
      Setting.whole("discards.dangerous-first-above-wall")
          .from(0)
          .to(99)
          .usual(99)
          .says(
              "among tiles it does not need, throws first what most lines of the card use, while "
                  + "nobody shows an exposure and the wall has more than this many tiles (\"dangerous "
                  + "early, safe late\")");

  private final CardUse use = new CardUse();
  private final boolean repeats;
  private final int dangerousAbove;

  SpareOrder(SettingValues values) {
    repeats = values.get(REPEAT);
    dangerousAbove = values.get(DANGEROUS);
  }

  static List<Setting<?>> settings() {
    return List.of(REPEAT, DANGEROUS);
  }

  /**
   * Whether there is an order at all.
   *
   * @return false where the need alone decides
   */
  boolean isOn() {
    return repeats || dangerousAbove < 99;
  }

  /**
   * The tile that goes first.
   *
   * @param view what the seat knows
   * @param unneeded which kinds it does not need
   * @return its kind, or -1 where the order says nothing
   */
  int next(SeatView view, RackJudge.KindTest unneeded) {
    if (repeats && view.discards() > 0) {
      int last = view.discardTile(view.discards() - 1);
      if (last < Tile.NATURALS && view.held(last) > 0 && unneeded.test(last)) {
        return last;
      }
    }
    return view.wallLeft() > dangerousAbove && nobodyShows(view) ? dangerous(view, unneeded) : -1;
  }

  private int dangerous(SeatView view, RackJudge.KindTest unneeded) {
    use.count(view.table().hands());
    int found = -1;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (view.held(kind) > 0
          && unneeded.test(kind)
          && (found < 0 || use.of(kind) > use.of(found))) {
        found = kind;
      }
    }
    return found;
  }

  private static boolean nobodyShows(SeatView view) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (seat != view.seat() && !view.exposures(seat).isEmpty()) {
        return false;
      }
    }
    return true;
  }
}
