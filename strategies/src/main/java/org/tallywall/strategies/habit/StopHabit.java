package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/** When to stop the passes after the first round. */
final class StopHabit {
  static final Setting<Integer> STRANGERS =
      Setting.whole("passes.stop-when-strangers-at-most")
          .from(-1)
          .to(13)
          .usual(2)
          .says(
              "stops the second round with this many strangers or fewer; strangers are tiles that "
                  + "fit no hand it has in mind; -1 never stops (\"stop if you can spare fewer than "
                  + "three\")");
  private static final Setting<Integer> JOKERS =
      Setting.whole("passes.stop-with-jokers-at-least")
          .from(1)
          .to(9)
          .usual(9)
          .says(
              "stops the second round with this many jokers or more; 9 never does (\"three jokers: "
                  + "stop the passes\")");
  private static final Setting<Integer> PAIRS =
      Setting.whole("passes.stop-with-pairs-at-least")
          .from(1)
          .to(8)
          .usual(8)
          .says(
              "stops the second round with this many pairs or more; 8 never does (\"a poor rack "
                  + "full of pairs: stop\")");
  private static final Setting<Boolean> UNDECIDED =
      Setting.onOff("passes.stop-when-undecided")
          .usual(false)
          .says(
              "stops the second round while lines of two families are equally near (\"undecided is "
                  + "no reason to stop\", turned around)");
  private static final int NO_PAIRS = 8;

  private final Giving giving;
  private final LineDistances distances = new LineDistances();
  private final Rack rack = new Rack();
  private final int strangers;
  private final int jokers;
  private final int pairs;
  private final boolean undecided;

  StopHabit(Giving giving, SettingValues values) {
    this.giving = giving;
    strangers = values.get(STRANGERS);
    jokers = values.get(JOKERS);
    pairs = values.get(PAIRS);
    undecided = values.get(UNDECIDED);
  }

  static List<Setting<?>> settings() {
    return List.of(STRANGERS, JOKERS, PAIRS, UNDECIDED);
  }

  boolean stops(SeatView view) {
    if (view.held(Tile.JOKER) >= jokers
        || (pairs < NO_PAIRS && pairs(view) >= pairs)
        || (undecided && isUndecided(view))) {
      return true;
    }
    giving.begin(view);
    int least = giving.beside();
    return giving.strangers(strangers + 1) <= strangers && least <= strangers;
  }

  private static int pairs(SeatView view) {
    int pairs = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      pairs += view.held(kind) >= 2 ? 1 : 0;
    }
    return pairs;
  }

  private boolean isUndecided(SeatView view) {
    view.copyRack(rack);
    distances.measure(view, rack, view.reach(view.seat()));
    return distances.nearestFamilies(view.table().hands()) > 1;
  }
}
