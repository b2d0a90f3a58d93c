package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** When to stop the passes after the first round. */
final class StopHabit {
  private static final String STRANGERS = "passes.stop-when-strangers-at-most";
  private static final String JOKERS = "passes.stop-with-jokers-at-least";
  private static final String PAIRS = "passes.stop-with-pairs-at-least";
  private static final String UNDECIDED = "passes.stop-when-undecided";
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
    strangers = values.whole(STRANGERS);
    jokers = values.whole(JOKERS);
    pairs = values.whole(PAIRS);
    undecided = values.flag(UNDECIDED);
  }

  static List<Setting> settings() {
    return List.of(
        Setting.number(
            STRANGERS,
            "2",
            "-1",
            "13",
            "stop the second round with so few tiles to spare; -1 never stops (\"stop if fewer"
                + " than three can be spared\")"),
        Setting.number(
            JOKERS,
            "9",
            "1",
            "9",
            "stop the second round with so many jokers; 9 never does (\"three jokers: stop the"
                + " passes\")"),
        Setting.number(
            PAIRS,
            "8",
            "1",
            "8",
            "stop the second round with so many kinds held twice or more; 8 never does (\"a poor"
                + " rack full of pairs: stop\")"),
        Setting.flag(
            UNDECIDED,
            false,
            "stop the second round while lines of two families are equally near (\"undecided is no"
                + " reason to stop\", turned round)"));
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
