package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
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

  /** Whether a win is taken in the way that pays most. */
  public static final Setting<Boolean> BY_EXCHANGE =
      Setting.onOff("wins.dearer-by-exchange")
          .usual(false)
          .says(
              "lays a tile that completes its hand open and redeems a joker before it declares, where "
                  + "that pays more (\"an exchange is paid as self-picked\")");

  private final HandMeter meter = new HandMeter();
  private final Rack rack = new Rack();
  private final int least;
  private final DearerWin dearer;

  /**
   * The habit.
   *
   * @param values the settings named {@code wins.…}
   */
  public WinHabit(SettingValues values) {
    least = values.get(VALUE);
    dearer = values.get(BY_EXCHANGE) ? new DearerWin() : null;
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> settings() {
    return List.of(VALUE, BY_EXCHANGE);
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

  /**
   * How to take a tile that completes the hand, where the player wants to win on it.
   *
   * @param view what the seat knows, with a tile on offer that completes its hand
   * @return mahjong, or an exposure with which the hand will pay more
   */
  public ClaimChoice claim(SeatView view) {
    ClaimChoice exposure = dearer == null ? null : dearer.claim(view);
    return exposure == null ? ClaimChoice.mahjong() : exposure;
  }

  /**
   * How to end the game with a complete hand, where the player wants to win.
   *
   * @param view what the seat knows, in its turn, its hand complete
   * @return mahjong, or an exchange to make before
   */
  public TurnChoice turn(SeatView view) {
    TurnChoice exchange = dearer == null ? null : dearer.exchange(view);
    return exchange == null ? TurnChoice.mahjong() : exchange;
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
