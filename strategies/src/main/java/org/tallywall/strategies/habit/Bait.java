package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;

/**
 * Joker bait: a pair that the own hand does not need and nobody gave is kept until somebody can lay
 * such a group open, with jokers; then one of it is thrown, so that the other can redeem a joker.
 * The pair is kept only while there is another tile that the hand does not need either.
 */
final class Bait {
  private static final String BAIT = "jokers.bait";
  private static final String CLAIMABLE = BAIT + ".throw-one-when-claimable";
  private static final String FROM = BAIT + ".from-wall";
  private static final String TO = BAIT + ".to-wall";

  private final boolean on;
  private final boolean whenClaimable;
  private final int from;
  private final int to;

  Bait(SettingValues values) {
    on = values.flag(BAIT);
    whenClaimable = values.flag(CLAIMABLE);
    from = values.whole(FROM);
    to = values.whole(TO);
  }

  static List<Setting> settings() {
    return List.of(
        Setting.flag(
            BAIT,
            false,
            "keep a pair one does not need and nobody gave, and throw one of it so that the other"
                + " can redeem a joker (\"keep an unwanted pair as joker bait and break it late\")"),
        Setting.flag(
            CLAIMABLE, true, "throw it only when somebody's exposures let her lay such a group"),
        Setting.number(
            FROM, "60", "0", "99", "throw it from so many tiles left in the wall downwards"),
        Setting.number(TO, "15", "0", "99", "throw it no later than with so many tiles left"));
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
