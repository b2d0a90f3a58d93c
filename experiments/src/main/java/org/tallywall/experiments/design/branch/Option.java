package org.tallywall.experiments.design.branch;

import java.math.BigDecimal;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.habit.DefenseSettings;
import org.tallywall.strategies.habit.DiscardHabit;
import org.tallywall.strategies.setting.Setting;

/**
 * One of the things that can be done at a decision.
 *
 * @param what which of them
 * @param player chooses the tile to throw; null where none is thrown
 */
record Option(BranchOption what, Player player) {
  /**
   * An option for a studied player.
   *
   * @param what which
   * @param spec the studied player
   * @return the option
   * @throws WrongInputException if the player has no settings that make it throw so
   */
  static Option of(BranchOption what, PlayerSpec spec) {
    return switch (what) {
      case OWN_NEED -> new Option(what, ownNeed(spec).make());
      case SAFEST -> new Option(what, safest(spec).make());
      case NOTHING, CLAIM -> new Option(what, null);
    };
  }

  /** The player as one that throws by its own need, whatever the others show. */
  static PlayerSpec ownNeed(PlayerSpec spec) {
    PlayerSpec player = spec;
    player = where(player, DefenseSettings.CAREFUL, false);
    player = where(player, DefenseSettings.HOLD_BACK, false);
    player = where(player, DefenseSettings.TO_THE_WALL, false);
    player = where(player, DefenseSettings.LAST_WALL, BigDecimal.ZERO);
    return where(player, DiscardHabit.RISK_WEIGHT, BigDecimal.ZERO);
  }

  /** The player as one that throws the safest tile from its first turn on. */
  static PlayerSpec safest(PlayerSpec spec) {
    PlayerSpec player = must(spec, DefenseSettings.TO_THE_WALL, true);
    player = must(player, DefenseSettings.FROM_START_AWAY, BigDecimal.ONE);
    return must(player, DefenseSettings.LAST_WALL, BigDecimal.ZERO);
  }

  /** Sets what the player has; one without the setting plays so anyway. */
  private static PlayerSpec where(PlayerSpec spec, Setting<?> setting, Object value) {
    return has(spec, setting) ? spec.with(setting.name(), value) : spec;
  }

  private static PlayerSpec must(PlayerSpec spec, Setting<?> setting, Object value) {
    if (!has(spec, setting)) {
      throw new WrongInputException(
          "the player \"%s\" knows no safe tiles, so it cannot throw the safest; name one with"
                  .formatted(spec.type().id())
              + " settings of defense, such as watchful");
    }
    return spec.with(setting.name(), value);
  }

  private static boolean has(PlayerSpec spec, Setting<?> setting) {
    return spec.type().settings().stream().map(Setting::name).anyMatch(setting.name()::equals);
  }

  TurnChoice turn(SeatView view, RandomStream random) {
    return player.turn(view, random);
  }

  /** What is done about a tile on offer, where one claim brings the hand nearest. */
  ClaimChoice claim(ClaimChoice nearest) {
    return what == BranchOption.NOTHING ? ClaimChoice.nothing() : nearest;
  }
}
