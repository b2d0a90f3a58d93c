package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.hand.LineWeights;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/** When one line is settled on, so that the others are no longer kept in view. */
final class Commitment implements LineWeights {
  private static final Setting<Integer> AWAY =
      Setting.whole("aim.one-line-when-away-at-most")
          .from(0)
          .to(14)
          .usual(0)
          .says(
              "settles on one line when this many tiles away or nearer (\"keep two open until "
                  + "late\")");
  private static final Setting<Integer> WALL =
      Setting.whole("aim.one-line-below-wall")
          .from(0)
          .to(100)
          .usual(0)
          .says(
              "settles on one line with fewer than this many tiles in the wall (\"keep two open "
                  + "until late\")");

  private final int away;
  private final int wall;
  private boolean late;

  Commitment(SettingValues values) {
    away = values.get(AWAY);
    wall = values.get(WALL);
  }

  static List<Setting<?>> settings() {
    return List.of(AWAY, WALL);
  }

  boolean neutral() {
    return away == 0 && wall == 0;
  }

  @Override
  public void begin(SeatView view, Rack rack, Reach possible) {
    late = view.wallLeft() < wall;
  }

  @Override
  public double of(int hand, Lack lack, int naturals) {
    return 1;
  }

  @Override
  public int lines(int usual, int least) {
    return late || least <= away ? 1 : usual;
  }
}
