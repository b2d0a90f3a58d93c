package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.strategies.read.OpponentReader;
import org.tallywall.strategies.read.ReadSettings;
import org.tallywall.strategies.read.Revealed;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/** What a player reads of the others; each kind of evidence can be switched off. */
public final class ReadHabit {
  private static final Setting<Boolean> EXPOSURES =
      Setting.onOff("read.exposures")
          .usual(true)
          .says(
              "works out which lines the exposures of the others leave them (\"two exposures: name "
                  + "the line\")");
  private static final Setting<Boolean> DISCARDS =
      Setting.onOff("read.discards")
          .usual(true)
          .says(
              "counts as safer what an opponent threw herself, what just went around unclaimed, "
                  + "and kinds that lie on the table (\"what was just thrown can be thrown again\")");

  /** Whether it remembers what it was passed. */
  public static final Setting<Boolean> PASSES =
      Setting.onOff("read.passes")
          .usual(true)
          .says(
              "counts as safer for an opponent what she passed to it (\"remember what came back\")");

  private static final Setting<Double> BLIND =
      Setting.decimal("read.blind")
          .from(0.0)
          .to(1.0)
          .usual(0.0)
          .says(
              "raises an opponent's chance to win by a share of this much for each tile that she "
                  + "passed blind (\"a blind pass tells that you are far along\")");

  /** Whether all that can be seen is read. */
  public static final Setting<Boolean> TELLS =
      Setting.onOff("read.tells")
          .usual(false)
          .says(
              "judges how near an opponent is, and what she waits for, by all that can be seen of "
                  + "her: whether she stopped the passes, passed blind, or redeemed jokers, and what "
                  + "she threw and let lie (\"who throws nothing but new tiles is nearly there\")");

  private ReadHabit() {}

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> settings() {
    return List.of(EXPOSURES, DISCARDS, PASSES, BLIND, TELLS);
  }

  /**
   * What a reader goes by.
   *
   * @param values the settings named {@code read.…}
   * @return the reader's settings
   */
  static ReadSettings reading(SettingValues values) {
    return new ReadSettings(
        values.get(EXPOSURES),
        values.get(DISCARDS),
        values.get(PASSES),
        values.get(BLIND),
        values.get(TELLS));
  }

  /**
   * A reader of opponents.
   *
   * @param values the settings named {@code read.…}
   * @return a new reader
   */
  public static OpponentReader reader(SettingValues values) {
    return reader(values, Revealed.NOTHING);
  }

  /**
   * A reader of opponents that may know more than its seat.
   *
   * @param values the settings named {@code read.…}
   * @param revealed what it is told beside what its seat sees
   * @return a new reader
   */
  public static OpponentReader reader(SettingValues values, Revealed revealed) {
    return new OpponentReader(reading(values), revealed);
  }
}
