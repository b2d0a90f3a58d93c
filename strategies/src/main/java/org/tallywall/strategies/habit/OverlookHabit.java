package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.random.RandomStream;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/** Lapses by chance, as they happen at a weekly table; with all chances 0 nothing is drawn. */
public final class OverlookHabit {
  /** Chance to overlook an exchange, 0 to 1. */
  public static final Setting<Double> EXCHANGE =
      Setting.decimal("overlooks.exchange")
          .from(0.0)
          .to(1.0)
          .usual(0.0)
          .says("overlooks an exchange with a chance of this much");

  /** Chance to overlook a call, 0 to 1. */
  public static final Setting<Double> CALL =
      Setting.decimal("overlooks.call")
          .from(0.0)
          .to(1.0)
          .usual(0.0)
          .says("overlooks a call with a chance of this much");

  private static final Setting<Double> WIN =
      Setting.decimal("overlooks.win")
          .from(0.0)
          .to(1.0)
          .usual(0.0)
          .says("overlooks a win with a chance of this much");

  private final double exchange;
  private final double call;
  private final double win;

  /**
   * The habit.
   *
   * @param values the settings named {@code overlooks.…}
   */
  public OverlookHabit(SettingValues values) {
    exchange = values.get(EXCHANGE);
    call = values.get(CALL);
    win = values.get(WIN);
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> settings() {
    return List.of(EXCHANGE, CALL, WIN);
  }

  /**
   * Whether an exchange is overlooked now.
   *
   * @param random numbers of this question
   * @return true with the chance set
   */
  public boolean exchange(RandomStream random) {
    return random.happens(exchange);
  }

  /**
   * Whether a call is overlooked now.
   *
   * @param random numbers of this question
   * @return true with the chance set
   */
  public boolean call(RandomStream random) {
    return random.happens(call);
  }

  /**
   * Whether a win is overlooked now.
   *
   * @param random numbers of this question
   * @return true with the chance set
   */
  public boolean win(RandomStream random) {
    return random.happens(win);
  }
}
