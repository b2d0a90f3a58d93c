package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * The chase for a hand without jokers, where the line aimed at pays double for it. It lasts while
 * the seat has none, on its rack or laid open; the one just drawn can be thrown again.
 */
final class Jokerless {
  private static final Setting<Integer> AWAY =
      Setting.whole("jokers.chase-jokerless-when-away-at-most")
          .from(-1)
          .to(14)
          .usual(-1)
          .says(
              "without a joker, and this many tiles away or nearer to a line that pays double "
                  + "jokerless, redeems none and throws the one it draws; -1 never does (\"jokerless is "
                  + "a bonus, not a plan\")");
  private static final int SLACK = 2;

  private final RackJudge without;
  private final Rack rack = new Rack();
  private final int away;

  Jokerless(RackJudge without, SettingValues values) {
    this.without = without;
    away = values.get(AWAY);
  }

  static List<Setting<?>> settings() {
    return List.of(AWAY);
  }

  /** Whether jokers are left where they are. */
  boolean leaves(SeatView view) {
    return away >= 0 && view.held(Tile.JOKER) == 0 && near(view);
  }

  /** Whether the joker just drawn is thrown. */
  boolean throwsDrawn(SeatView view) {
    return away >= 0 && view.drawn() == Tile.JOKER && view.held(Tile.JOKER) == 1 && near(view);
  }

  private boolean near(SeatView view) {
    for (Exposure exposure : view.exposures(view.seat())) {
      if (exposure.jokers() > 0) {
        return false;
      }
    }
    view.copyRack(rack);
    rack.remove(Tile.JOKER, rack.jokers());
    without.look(view, rack, view.reach(view.seat()), SLACK, 0);
    return without.aim() != Player.NO_AIM
        && without.least() <= away
        && view.table().hands().line(without.aim()).terms().jokerless();
  }
}
