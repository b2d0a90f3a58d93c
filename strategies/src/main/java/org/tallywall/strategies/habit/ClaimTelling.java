package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * What a claim gives away: the lines that it rules out for oneself, and those that it leaves for
 * the others to think of. These see the exposures and what lies face up, not the rack.
 */
final class ClaimTelling {
  private static final Setting<Integer> LOST =
      Setting.whole("claims.targets-lost-at-most")
          .from(0)
          .to(9)
          .usual(9)
          .says(
              "claims only if that costs at most this many lines within a tile of the nearest; 9 "
                  + "sets no limit (\"claim early only when it keeps two targets open\")");
  private static final Setting<Integer> LEFT =
      Setting.whole("claims.lines-left-for-others-at-least")
          .from(0)
          .to(20)
          .usual(0)
          .says(
              "claims only if the others can still think of this many lines or more (\"do not show "
                  + "the group that names your hand\")");
  private static final Setting<Integer> UNLESS =
      Setting.whole("claims.unless-away-at-most")
          .from(0)
          .to(14)
          .usual(1)
          .says(
              "claims even what names its hand if that brings it to this many tiles away or nearer "
                  + "(\"until it makes you one away\")");
  private static final int ANY = 9;

  /** Lines so much further than the nearest are still targets. */
  private static final int NEAR = 1;

  private final LineDistances now = new LineDistances();
  private final LineDistances then = new LineDistances();
  private final Rack rack = new Rack();
  private final int lost;
  private final int left;
  private final int unless;

  ClaimTelling(SettingValues values) {
    lost = values.get(LOST);
    left = values.get(LEFT);
    unless = values.get(UNLESS);
  }

  static List<Setting<?>> settings() {
    return List.of(LOST, LEFT, UNLESS);
  }

  /** Whether a claim gives too much away. */
  boolean tellsTooMuch(Laying laying) {
    if (lost >= ANY && left == 0) {
      return false;
    }
    then.measure(laying.view(), laying.rack(), laying.left());
    return (lost < ANY && lostTargets(laying.view()) > lost)
        || (then.living() < left && then.least() > unless);
  }

  private int lostTargets(SeatView view) {
    view.copyRack(rack);
    now.measure(view, rack, view.reach(view.seat()));
    int least = now.least();
    int count = 0;
    for (int line = 0; line < now.lines() && least < HandMeter.NONE; line++) {
      boolean target = now.away(line) <= least + NEAR;
      count += target && then.away(line) == HandMeter.NONE ? 1 : 0;
    }
    return count;
  }
}
