package org.tallywall.strategies.player;

import java.util.List;
import java.util.stream.Stream;
import org.tallywall.strategies.habit.AimHabit;
import org.tallywall.strategies.habit.ClaimHabit;
import org.tallywall.strategies.habit.ColderHabit;
import org.tallywall.strategies.habit.DefenseSettings;
import org.tallywall.strategies.habit.DiscardHabit;
import org.tallywall.strategies.habit.FamiliesKnown;
import org.tallywall.strategies.habit.HerTiles;
import org.tallywall.strategies.habit.HopesBy;
import org.tallywall.strategies.habit.JokerHabit;
import org.tallywall.strategies.habit.KnowsHabit;
import org.tallywall.strategies.habit.OverlookHabit;
import org.tallywall.strategies.habit.PassHabit;
import org.tallywall.strategies.habit.ReadHabit;
import org.tallywall.strategies.habit.WinHabit;
import org.tallywall.strategies.setting.Preset;
import org.tallywall.strategies.setting.Setting;

/** Ways of playing of a {@link HabitPlayer}, each told by what it sets otherwise than another. */
final class HabitPresets {
  /** Looks at nobody else: every setting as it was declared. */
  static final List<Setting<?>> RECKONER =
      Stream.of(
              AimHabit.settings(),
              PassHabit.settings(),
              ClaimHabit.settings(),
              JokerHabit.settings(),
              ColderHabit.settings(),
              DiscardHabit.settings(),
              DefenseSettings.all(),
              ReadHabit.settings(),
              WinHabit.settings(),
              OverlookHabit.settings(),
              KnowsHabit.settings())
          .<Setting<?>>flatMap(List::stream)
          .toList();

  /** Reads the others, and all steps of defense are on. */
  static final Preset WATCHFUL =
      Preset.of(RECKONER)
          .with(DiscardHabit.RISK_WEIGHT, 0.6)
          .with(DefenseSettings.CAREFUL, true)
          .with(DefenseSettings.HOLD_BACK, true)
          .with(DefenseSettings.HER_TILES, HerTiles.WEIGH)
          .with(DefenseSettings.TO_THE_WALL, true)
          .with(DefenseSettings.TO_THE_WALL_AWAY, 6)
          .with(DefenseSettings.DRAWS_PER_MISSING, 0)
          .with(DefenseSettings.LAST_WALL, 12);

  /** Gives up late. */
  static final Preset BOLD =
      Preset.of(WATCHFUL.settings())
          .with(DefenseSettings.CAREFUL_AWAY, 5)
          .with(DefenseSettings.HOLD_BACK_EXPOSURES, 3)
          .with(DefenseSettings.HOLD_BACK_AWAY, 4)
          .with(DefenseSettings.TO_THE_WALL_EXPOSURES, 4);

  /** Holds back and gives up early. */
  static final Preset CAUTIOUS =
      Preset.of(WATCHFUL.settings())
          .with(DefenseSettings.CAREFUL_AWAY, 2)
          .with(DefenseSettings.HOLD_BACK_AWAY, 2)
          .with(DefenseSettings.HOLD_BACK_RISK, 3.0)
          .with(DefenseSettings.TO_THE_WALL_AWAY, 4)
          .with(DefenseSettings.DRAWS_PER_MISSING, 1)
          .with(DefenseSettings.LAST_WALL, 16);

  /** Reads all that can be seen, and weighs every tile. */
  static final Preset SHARP =
      Preset.of(WATCHFUL.settings())
          .with(ReadHabit.TELLS, true)
          .with(DiscardHabit.HOPES_BY, HopesBy.RACK)
          .with(DefenseSettings.LAST_WALL_HERS, HerTiles.WEIGH)
          .with(WinHabit.BY_EXCHANGE, true);

  /** Plays for company: knows a few families, claims what helps at once, misses things. */
  static final Preset SOCIAL =
      Preset.of(RECKONER)
          .with(AimHabit.TARGETS, 1)
          .with(FamiliesKnown.KNOWN, 2)
          .with(ClaimHabit.GAIN, 0.8)
          .with(ClaimHabit.JOKERS_AWAY, 14)
          .with(OverlookHabit.EXCHANGE, 0.4)
          .with(OverlookHabit.CALL, 0.35);

  /** Sound and plain: keeps two lines in mind, holds back late, misses little. */
  static final Preset STEADY =
      Preset.of(RECKONER)
          .with(AimHabit.TARGETS, 2)
          .with(DefenseSettings.CAREFUL, true)
          .with(DefenseSettings.HOLD_BACK, true)
          .with(DefenseSettings.HOLD_BACK_EXPOSURES, 3)
          .with(DefenseSettings.LAST_WALL, 12)
          .with(ReadHabit.PASSES, false)
          .with(OverlookHabit.EXCHANGE, 0.05)
          .with(OverlookHabit.CALL, 0.05);

  private HabitPresets() {}
}
