package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.hand.LineWeights;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * Chooses a family first and a line in it later. The family is the one that offers most ways on:
 * each of its lines counts half as much for every tile that it is further than the nearest line of
 * the card, and a family whose best line is more than a tile behind is not looked at. While the
 * rack is nearer than three tiles, the line is chosen and families no longer matter.
 */
final class FamilyFirst implements LineWeights {
  private static final Setting<FirstChoice> BY =
      Setting.choice("aim.first-by", FirstChoice.class)
          .usual(FirstChoice.LINE)
          .says(
              "picks: a line right away (line), a family first and a line in it when two away "
                  + "(family) (\"choose a direction\", \"play few families well\")");
  private static final int LINE_FROM = 2;
  private static final int BEHIND = 1;

  private final LineDistances distances = new LineDistances();
  private final boolean on;
  private Reach reach;
  private String family;

  FamilyFirst(SettingValues values) {
    on = values.get(BY) == FirstChoice.FAMILY;
  }

  static List<Setting<?>> settings() {
    return List.of(BY);
  }

  boolean neutral() {
    return !on;
  }

  @Override
  public void begin(SeatView view, Rack rack, Reach possible) {
    reach = possible;
    distances.measure(view, rack, possible);
    family = distances.least() <= LINE_FROM ? null : best(possible.hands());
  }

  private String best(ConcreteHands hands) {
    int least = distances.least();
    String best = null;
    double most = 0;
    int line = 0;
    while (line < distances.lines()) {
      String name = hands.line(line).family();
      int nearest = HandMeter.NONE;
      double ways = 0;
      for (; line < distances.lines() && hands.line(line).family().equals(name); line++) {
        int behind = distances.away(line) - least;
        nearest = Math.min(nearest, behind);
        ways += half(behind);
      }
      if (nearest <= BEHIND && ways > most) {
        most = ways;
        best = name;
      }
    }
    return best;
  }

  private static double half(int times) {
    double share = 1;
    for (int step = 0; step < times; step++) {
      share /= 2;
    }
    return share;
  }

  @Override
  public double of(int hand, Lack lack, int naturals) {
    String own = reach.hands().line(reach.line(hand)).family();
    return family == null || own.equals(family) ? 1 : AllWeights.LEFT_ASIDE;
  }
}
