package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.strategies.read.OpponentReader;
import org.tallywall.strategies.read.ReadSettings;

/** What a player reads of the others; each kind of evidence can be switched off. */
public final class ReadHabit {
  private static final String NAME = "read.";

  private ReadHabit() {}

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting> settings() {
    return List.of(
        Setting.flag(
            NAME + "exposures",
            true,
            "work out which lines the exposures of the others leave (\"two exposures: name the"
                + " line\")"),
        Setting.flag(
            NAME + "discards",
            true,
            "count as safer what an opponent threw herself, what has just gone round unclaimed, and"
                + " kinds that lie on the table (\"what was just thrown can be thrown again\")"),
        Setting.flag(
            NAME + "passes",
            true,
            "count as safer for an opponent what she passed to you (\"remember what came back\")"),
        Setting.number(
            NAME + "blind",
            "0",
            "0.0",
            "1.0",
            "how much nearer each tile that an opponent passed on blind makes her seem (\"a blind"
                + " pass tells that you are far along\")"));
  }

  /**
   * What a reader goes by.
   *
   * @param values the settings named {@code read.…}
   * @return the reader's settings
   */
  static ReadSettings reading(SettingValues values) {
    return new ReadSettings(
        values.flag(NAME + "exposures"),
        values.flag(NAME + "discards"),
        values.flag(NAME + "passes"),
        values.number(NAME + "blind"));
  }

  /**
   * A reader of opponents.
   *
   * @param values the settings named {@code read.…}
   * @return a new reader
   */
  public static OpponentReader reader(SettingValues values) {
    return new OpponentReader(reading(values));
  }
}
