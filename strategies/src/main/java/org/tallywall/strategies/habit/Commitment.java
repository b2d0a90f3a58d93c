package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.hand.LineWeights;

/** When one line is settled on, so that the others are no longer kept in view. */
final class Commitment implements LineWeights {
  private static final String AWAY = "aim.one-line-when-away-at-most";
  private static final String WALL = "aim.one-line-below-wall";

  private final int away;
  private final int wall;
  private boolean late;

  Commitment(SettingValues values) {
    away = values.whole(AWAY);
    wall = values.whole(WALL);
  }

  static List<Setting> settings() {
    return List.of(
        Setting.number(
            AWAY,
            "0",
            "0",
            "14",
            "settle on one line when so few tiles away (\"keep two open until late\")"),
        Setting.number(
            WALL,
            "0",
            "0",
            "100",
            "settle on one line with fewer tiles than that in the wall (\"keep two open until"
                + " late\")"));
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
