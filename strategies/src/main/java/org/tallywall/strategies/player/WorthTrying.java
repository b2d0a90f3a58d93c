package org.tallywall.strategies.player;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.strategies.habit.Setting;
import org.tallywall.strategies.habit.SettingValues;

/**
 * Which decisions are worth playouts. Far from a hand and early in the game the choices differ by
 * less than playouts can tell, and players of playouts build too roughly to be asked; there the
 * usual choice stands.
 *
 * @param away tiles away at most; a rack further off is not tried
 * @param wall tiles left in the wall at most
 */
record WorthTrying(int away, int wall) {
  private static final String NAME = "rollout.";

  /** Every decision. */
  static final WorthTrying ALWAYS = new WorthTrying(Integer.MAX_VALUE, Integer.MAX_VALUE);

  static WorthTrying of(SettingValues values) {
    return new WorthTrying(
        values.whole(NAME + "when-away-at-most"), values.whole(NAME + "below-wall"));
  }

  static List<Setting> settings() {
    return List.of(
        Setting.number(
            NAME + "when-away-at-most",
            "3",
            "1",
            "14",
            "choices are tried out from so many tiles away, or nearer"),
        Setting.number(
            NAME + "below-wall",
            "84",
            "0",
            "99",
            "choices are tried out with so many tiles left in the wall, or fewer"));
  }

  boolean at(SeatView view, int least) {
    return least <= away && view.wallLeft() <= wall;
  }
}
