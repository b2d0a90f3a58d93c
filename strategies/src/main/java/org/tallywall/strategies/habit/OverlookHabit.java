package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.random.RandomStream;

/** Lapses by chance, as they happen at a weekly table; with all chances 0 nothing is drawn. */
public final class OverlookHabit {
  private static final String NAME = "overlooks.";

  private final double exchange;
  private final double call;
  private final double win;

  /**
   * The habit.
   *
   * @param values the settings named {@code overlooks.…}
   */
  public OverlookHabit(SettingValues values) {
    exchange = values.number(NAME + "exchange");
    call = values.number(NAME + "call");
    win = values.number(NAME + "win");
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting> settings() {
    return List.of(
        Setting.number(NAME + "exchange", "0", "0.0", "1.0", "chance to overlook an exchange"),
        Setting.number(NAME + "call", "0", "0.0", "1.0", "chance to overlook a call"),
        Setting.number(NAME + "win", "0", "0.0", "1.0", "chance to overlook a win"));
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
