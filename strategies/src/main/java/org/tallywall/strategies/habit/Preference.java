package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.hand.LineWeights;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * A family or a line that is pursued: each of its hands counts several times as much as it would.
 * Hands that are dead, or more than two tiles further than the nearest, stay out of the choice, so
 * that nobody runs after a lost cause.
 */
public final class Preference implements LineWeights {
  /** Which family is pursued; none where the name is empty. */
  public static final Setting<String> FAMILY =
      Setting.family("aim.prefer-family")
          .says(
              "leans toward this family: counts its lines several times as much (\"pick a section and stay with it\")");

  private static final Setting<String> LINE =
      Setting.line("aim.prefer-line")
          .says("leans toward this line: counts it several times as much");
  private static final Setting<Double> BY =
      Setting.decimal("aim.prefer-by")
          .from(1.0)
          .to(100.0)
          .usual(3.0)
          .says("counts the lines it leans toward this many times as much when it picks one");

  private final String family;
  private final String line;
  private final double by;
  private ConcreteHands card;
  private boolean[] preferred = new boolean[0];
  private Reach reach;

  Preference(SettingValues values) {
    family = values.get(FAMILY);
    line = values.get(LINE);
    by = values.get(BY);
  }

  static List<Setting<?>> settings() {
    return List.of(FAMILY, LINE, BY);
  }

  boolean neutral() {
    return by == 1 || (family.isEmpty() && line.isEmpty());
  }

  @Override
  public void begin(SeatView view, Rack rack, Reach possible) {
    reach = possible;
    if (card != possible.hands()) {
      card = possible.hands();
      preferred = new boolean[card.lines()];
      for (int at = 0; at < preferred.length; at++) {
        preferred[at] = prefers(card.line(at));
      }
    }
  }

  private boolean prefers(Line one) {
    boolean ofFamily = !family.isEmpty() && family.equalsIgnoreCase(one.family());
    boolean named = line.equalsIgnoreCase(one.id()) || line.equalsIgnoreCase(one.say());
    return ofFamily || (!line.isEmpty() && named);
  }

  @Override
  public double of(int hand, Lack lack, int naturals) {
    return preferred[reach.line(hand)] ? by : 1;
  }
}
