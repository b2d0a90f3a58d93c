package org.tallywall.strategies.habit;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.strategies.hand.Foresight;
import org.tallywall.strategies.hand.JudgeSettings;
import org.tallywall.strategies.hand.LineWeights;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/** What hands a player goes for. */
public final class AimHabit {
  /** How many lines are kept in mind, 1 to 4. */
  public static final Setting<Integer> TARGETS =
      Setting.whole("aim.targets")
          .from(1)
          .to(4)
          .usual(4)
          .says("keeps this many lines in mind (\"count tiles per line, keep the two best\")");

  private static final Setting<Double> VALUE_WEIGHT =
      Setting.decimal("aim.value-weight")
          .from(0.0)
          .to(2.0)
          .usual(0.5)
          .says(
              "counts a line's points with a weight of this much beside its chance (\"expensive "
                  + "lines lose more wins than they pay for\")");
  private static final Setting<Double> HASTE =
      Setting.decimal("aim.haste")
          .from(0.1)
          .to(1.0)
          .usual(0.5)
          .says(
              "leaves a hand this much of its chance for each missing tile, since someone else may "
                  + "win first");

  private AimHabit() {}

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> settings() {
    List<Setting<?>> all = new ArrayList<>(own());
    all.addAll(JokerAim.settings());
    all.addAll(LineTaste.settings());
    all.addAll(FamilyFirst.settings());
    all.addAll(Preference.settings());
    all.addAll(FamiliesKnown.settings());
    all.addAll(Commitment.settings());
    all.addAll(LineChange.settings());
    return List.copyOf(all);
  }

  private static List<Setting<?>> own() {
    return List.of(TARGETS, VALUE_WEIGHT, HASTE);
  }

  /**
   * What a judge of racks goes by.
   *
   * @param values the settings named {@code aim.…}
   * @return the judge's settings
   */
  public static JudgeSettings judge(SettingValues values) {
    return new JudgeSettings(
        values.get(TARGETS), values.get(VALUE_WEIGHT), 1, 3, values.get(HASTE));
  }

  /**
   * A judge of racks that follows the habit.
   *
   * @param values the settings named {@code aim.…}
   * @return a new judge
   */
  public static RackJudge rackJudge(SettingValues values) {
    return rackJudge(values, Foresight.NOTHING);
  }

  /**
   * A judge of racks that follows the habit and may know more than its seat.
   *
   * @param values the settings named {@code aim.…}
   * @param foresight what it is told beside what its seat sees
   * @return a new judge
   */
  public static RackJudge rackJudge(SettingValues values, Foresight foresight) {
    List<LineWeights> weights = tastes(values);
    if (!LineChange.neutral(values)) {
      RackJudge former = new RackJudge(judge(values), AllWeights.of(tastes(values)));
      weights.add(new LineChange(former, values));
    }
    return new RackJudge(judge(values), AllWeights.of(weights), foresight);
  }

  /** New weights for all settings that are not neutral, the changing of lines apart. */
  private static List<LineWeights> tastes(SettingValues values) {
    List<LineWeights> weights = new ArrayList<>();
    JokerAim jokers = new JokerAim(values);
    if (!jokers.neutral()) {
      weights.add(jokers);
    }
    LineTaste taste = new LineTaste(values);
    if (!taste.neutral()) {
      weights.add(taste);
    }
    FamilyFirst family = new FamilyFirst(values);
    if (!family.neutral()) {
      weights.add(family);
    }
    Preference preference = new Preference(values);
    if (!preference.neutral()) {
      weights.add(preference);
    }
    FamiliesKnown known = new FamiliesKnown(values);
    if (!known.neutral()) {
      weights.add(known);
    }
    Commitment commitment = new Commitment(values);
    if (!commitment.neutral()) {
      weights.add(commitment);
    }
    return weights;
  }
}
