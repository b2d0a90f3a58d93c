package org.tallywall.experiments.design.branch;

import java.math.BigDecimal;
import java.util.Optional;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.habit.DefenseSettings;
import org.tallywall.strategies.habit.DiscardHabit;
import org.tallywall.strategies.setting.Setting;

/**
 * One of the things that can be done at a decision.
 *
 * @param what which of them; empty where a player decides
 * @param player decides; null where nobody needs to be asked
 * @param asUsual whether that is the studied player itself, so that its own answer is taken
 */
record Option(Optional<BranchOption> what, Player player, boolean asUsual) {
  /**
   * An option for a studied player.
   *
   * @param choice which
   * @param spec the studied player
   * @return the option
   * @throws WrongInputException if the player has no settings that make it throw so
   */
  static Option of(BranchChoice choice, PlayerSpec spec) {
    if (choice.player().isPresent()) {
      PlayerSpec other = choice.player().get();
      boolean same = StudyJson.digest(other).equals(StudyJson.digest(spec));
      return new Option(Optional.empty(), same ? null : other.make(), same);
    }
    Player thrower =
        switch (choice.what().orElseThrow()) {
          case OWN_NEED -> ownNeed(spec).make();
          case SAFEST -> safest(spec).make();
          case NOTHING, CLAIM, STOP, GO_ON -> null;
        };
    return new Option(choice.what(), thrower, false);
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

  /** What is done in the studied player's turn, who would do what is usual. */
  TurnChoice turn(TurnChoice usual, SeatView view, RandomStream random) {
    return asUsual ? usual : player.turn(view, random);
  }

  /** What is done about a tile on offer, where one claim brings the hand nearest. */
  ClaimChoice claim(ClaimChoice usual, ClaimChoice nearest, SeatView view, RandomStream random) {
    if (asUsual) {
      return usual;
    } else if (player != null) {
      return player.claim(view, random);
    }
    return is(BranchOption.NOTHING) ? ClaimChoice.nothing() : nearest;
  }

  /** Which tiles are passed. */
  PassChoice pass(PassChoice usual, SeatView view, PassStep step, RandomStream random) {
    return asUsual ? usual : player.pass(view, step, random);
  }

  /** Whether the passes are stopped. */
  boolean stops(boolean usual, SeatView view, RandomStream random) {
    if (asUsual) {
      return usual;
    }
    return player == null ? is(BranchOption.STOP) : player.stops(view, random);
  }

  private boolean is(BranchOption option) {
    return what.equals(Optional.of(option));
  }
}
