package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.strategies.hand.JudgeSettings;
import org.tallywall.strategies.hand.RackJudge;

/** What hands a player goes for. */
public final class AimHabit {
  private static final String NAME = "aim.";

  private AimHabit() {}

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting> settings() {
    return List.of(
        Setting.number(
            NAME + "targets",
            "4",
            "1",
            "4",
            "number of lines kept in view (\"count tiles per line, keep the two best\")"),
        Setting.number(
            NAME + "value-weight",
            "0.5",
            "0.0",
            "2.0",
            "how much a line's value counts beside its chance (\"dear lines cost"
                + " more wins than they pay\")"),
        Setting.number(
            NAME + "haste",
            "0.5",
            "0.1",
            "1.0",
            "share of a hand's chance that is left for each tile that lacks, since somebody else may"
                + " be first"));
  }

  /**
   * What a judge of racks goes by.
   *
   * @param values the settings named {@code aim.…}
   * @return the judge's settings
   */
  public static JudgeSettings judge(SettingValues values) {
    return new JudgeSettings(
        values.whole(NAME + "targets"),
        values.number(NAME + "value-weight"),
        1,
        3,
        values.number(NAME + "haste"));
  }

  /**
   * A judge of racks that follows the habit.
   *
   * @param values the settings named {@code aim.…}
   * @return a new judge
   */
  public static RackJudge rackJudge(SettingValues values) {
    return new RackJudge(judge(values));
  }
}
