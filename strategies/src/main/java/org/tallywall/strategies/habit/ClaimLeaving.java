package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/** What a claim leaves: pairs still to be drawn, and jokers that somebody could redeem. */
final class ClaimLeaving {
  private static final Setting<Boolean> FIRST =
      Setting.onOff("claims.first-only-with-pairs")
          .usual(false)
          .says(
              "makes the first exposure only for a hand that has its pairs (\"never claim the "
                  + "first group of a line whose pairs you are missing\")");
  private static final Setting<Boolean> WAIT =
      Setting.onOff("claims.not-to-a-pair-wait")
          .usual(false)
          .says(
              "never claims down to waiting for nothing but a pair or a single (\"do not end on a "
                  + "pair\")");
  private static final Setting<Integer> JOKER =
      Setting.whole("claims.no-redeemable-joker-below-wall")
          .from(0)
          .to(100)
          .usual(0)
          .says(
              "with fewer than this many tiles in the wall, shows no joker that somebody could "
                  + "redeem, unless that makes it one away (\"no last exposure with a redeemable joker\")");

  private final PairsLacking pairs = new PairsLacking();
  private final boolean firstOnlyWithPairs;
  private final boolean notToPairWait;
  private final int jokerWall;

  ClaimLeaving(SettingValues values) {
    firstOnlyWithPairs = values.get(FIRST);
    notToPairWait = values.get(WAIT);
    jokerWall = values.get(JOKER);
  }

  static List<Setting<?>> settings() {
    return List.of(FIRST, WAIT, JOKER);
  }

  /** Whether a claim leaves what one does not want. */
  boolean leavesBadly(Laying laying) {
    SeatView view = laying.view();
    boolean first = firstOnlyWithPairs && view.exposures(view.seat()).isEmpty();
    boolean late = view.wallLeft() < jokerWall && redeemable(laying);
    if (!first && !notToPairWait && !late) {
      return false;
    }
    pairs.measure(view, laying.rack(), laying.left());
    boolean lacking = pairs.fewest() > 0;
    return (first && lacking)
        || (notToPairWait && lacking && pairs.away() == 1)
        || (late && pairs.away() > 1);
  }

  /** Whether another may hold, or draw, a natural for a joker of the exposure. */
  private static boolean redeemable(Laying laying) {
    return laying.exposure().jokers() > 0
        && laying.view().unseen(laying.exposure().kind()) > 0
        && laying.view().table().rules().jokers().others();
  }
}
