package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * Joker bait: a pair that the own hand does not need and nobody gave is kept until somebody can lay
 * such a group open, with jokers; then one of it is thrown, so that the other can redeem a joker.
 * The pair is kept only while there is another tile that the hand does not need either.
 */
final class Bait {
  private static final Setting<Boolean> BAIT =
      Setting.onOff("jokers.bait")
          .usual(false)
          .says(
              "keeps a pair that it does not need and nobody passed to it, and throws one of the "
                  + "two so that the other can redeem a joker (\"keep an unwanted pair as joker bait and "
                  + "break it late\")");
  private static final Setting<Boolean> CLAIMABLE =
      Setting.onOff("jokers.bait.throw-one-when-claimable")
          .usual(true)
          .says("throws the bait only when somebody's exposures still let her claim it");
  private static final Setting<Integer> FROM =
      Setting.whole("jokers.bait.from-wall")
          .from(0)
          .to(99)
          .usual(60)
          .says("throws the bait only with this many tiles left in the wall or fewer");
  private static final Setting<Integer> TO =
      Setting.whole("jokers.bait.to-wall")
          .from(0)
          .to(99)
          .usual(15)
          .says("throws the bait only with at least this many tiles left in the wall");

  private final boolean on;
  private final boolean whenClaimable;
  private final int from;
  private final int to;

  Bait(SettingValues values) {
    on = values.get(BAIT);
    whenClaimable = values.get(CLAIMABLE);
    from = values.get(FROM);
    to = values.get(TO);
  }

  static List<Setting<?>> settings() {
    return List.of(BAIT, CLAIMABLE, FROM, TO);
  }

  /**
   * The tile to throw, bait considered.
   *
   * @param view what the seat knows, with 14 tiles
   * @param judge has judged them
   * @param chosen the tile that would be thrown without bait
   * @return its kind
   */
  int discard(SeatView view, RackJudge judge, int chosen) {
    if (!on || view.wallLeft() < to) {
      return chosen;
    }
    double enough = DiscardHabit.enough(judge);
    if (view.wallLeft() <= from) {
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        if (isBait(view, judge, kind, enough) && (!whenClaimable || claimable(view, kind))) {
          return kind;
        }
      }
    }
    if (chosen >= Tile.NATURALS || !isBait(view, judge, chosen, enough)) {
      return chosen;
    }
    int other = judge.leastMissed(kind -> !isBait(view, judge, kind, enough));
    return other != Tile.JOKER && judge.worthWithout(other) >= enough ? other : chosen;
  }

  private static boolean isBait(SeatView view, RackJudge judge, int kind, double enough) {
    return view.held(kind) == 2
        && view.passes().stream().noneMatch(pass -> pass.received().contains(kind))
        && judge.worthWithout(kind) >= enough;
  }

  private static boolean claimable(SeatView view, int kind) {
    for (int other = 0; other < Seats.COUNT; other++) {
      boolean shows = other != view.seat() && !view.exposures(other).isEmpty();
      if (shows && !view.dead(other) && view.reach(other).openSizes(kind, true) != 0) {
        return true;
      }
    }
    return false;
  }
}
