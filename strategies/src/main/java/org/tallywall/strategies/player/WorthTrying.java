package org.tallywall.strategies.player;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * Which decisions are worth playouts. Far from a hand and early in the game the choices differ by
 * less than playouts can tell, and players of playouts build too roughly to be asked; there the
 * usual choice stands.
 *
 * @param away tiles away at most; a rack further off is not tried
 * @param wall tiles left in the wall at most
 */
record WorthTrying(int away, int wall) {
  private static final Setting<Integer> WHEN_AWAY_AT_MOST =
      Setting.whole("rollout.when-away-at-most")
          .from(1)
          .to(14)
          .usual(3)
          .says("tries choices out only when this many tiles away or nearer");
  private static final Setting<Integer> BELOW_WALL =
      Setting.whole("rollout.below-wall")
          .from(0)
          .to(99)
          .usual(84)
          .says("tries choices out only with this many tiles left in the wall or fewer");

  /** Every decision. */
  static final WorthTrying ALWAYS = new WorthTrying(Integer.MAX_VALUE, Integer.MAX_VALUE);

  static WorthTrying of(SettingValues values) {
    return new WorthTrying(values.get(WHEN_AWAY_AT_MOST), values.get(BELOW_WALL));
  }

  static List<Setting<?>> settings() {
    return List.of(WHEN_AWAY_AT_MOST, BELOW_WALL);
  }

  boolean at(SeatView view, int least) {
    return least <= away && view.wallLeft() <= wall;
  }
}
