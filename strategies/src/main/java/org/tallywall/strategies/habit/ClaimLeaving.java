package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.SeatView;

/** What a claim leaves: pairs still to be drawn, and jokers that somebody could redeem. */
final class ClaimLeaving {
  private static final String FIRST = "claims.first-only-with-pairs";
  private static final String WAIT = "claims.not-to-a-pair-wait";
  private static final String JOKER = "claims.no-redeemable-joker-below-wall";

  private final PairsLacking pairs = new PairsLacking();
  private final boolean firstOnlyWithPairs;
  private final boolean notToPairWait;
  private final int jokerWall;

  ClaimLeaving(SettingValues values) {
    firstOnlyWithPairs = values.flag(FIRST);
    notToPairWait = values.flag(WAIT);
    jokerWall = values.whole(JOKER);
  }

  static List<Setting> settings() {
    return List.of(
        Setting.flag(
            FIRST,
            false,
            "make the first exposure only for a hand that has its pairs (\"never claim the first"
                + " group of a line whose pairs you lack\")"),
        Setting.flag(
            WAIT,
            false,
            "never claim down to a wait for a pair or a single alone (\"do not end on a pair\")"),
        Setting.number(
            JOKER,
            "0",
            "0",
            "100",
            "with fewer tiles than that in the wall lay no joker that somebody could redeem, unless"
                + " that makes the hand one away (\"no last exposure with a redeemable joker\")"));
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
