package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/** Whether to win on a complete hand, or to decline a cheap win and play on. */
public final class WinHabit {
  private static final Setting<Integer> VALUE =
      Setting.whole("wins.value-at-least")
          .from(0)
          .to(100)
          .usual(0)
          .says(
              "turns down a win on a line of fewer than this many points and plays on (\"there is "
                  + "no second place\", turned around)");

  private final HandMeter meter = new HandMeter();
  private final Rack rack = new Rack();
  private final int least;

  /**
   * The habit.
   *
   * @param values the settings named {@code wins.…}
   */
  public WinHabit(SettingValues values) {
    least = values.get(VALUE);
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> settings() {
    return List.of(VALUE);
  }

  /**
   * Whether to win.
   *
   * @param view what the seat knows; its tiles are complete, the tile on offer counted
   * @return false to play on
   */
  public boolean takes(SeatView view) {
    return least == 0 || value(view) >= least;
  }

  private int value(SeatView view) {
    view.copyRack(rack);
    if (view.offered() >= 0 && view.offeredBy() != view.seat()) {
      rack.add(view.offered());
    }
    meter.hold(rack);
    Reach reach = view.reach(view.seat());
    int most = 0;
    for (int at = 0; at < reach.size(); at++) {
      int value = reach.hands().line(reach.line(at)).value();
      if (value > most && meter.away(reach, at) == 0) {
        most = value;
      }
    }
    return most;
  }
}
