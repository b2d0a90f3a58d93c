package org.tallywall.experiments.design.branch;

import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.strategies.catalog.PlayerSpec;
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

  private static PlayerSpec ownNeed(PlayerSpec spec) {
    PlayerSpec player = spec;
    for (String step : new String[] {"careful", "hold-back", "to-the-wall"}) {
      player = with(player, "defence." + step, false, false);
    }
    player = with(player, "defence.last-wall", java.math.BigDecimal.ZERO, false);
    return with(player, "discards.risk-weight", java.math.BigDecimal.ZERO, false);
  }

  private static PlayerSpec safest(PlayerSpec spec) {
    PlayerSpec player = with(spec, "defence.to-the-wall", true, true);
    player = with(player, "defence.from-start-when-away-at-least", java.math.BigDecimal.ONE, true);
    return with(player, "defence.last-wall", java.math.BigDecimal.ZERO, true);
  }

  private static PlayerSpec with(PlayerSpec spec, String name, Object value, boolean needed) {
    if (spec.type().settings().stream().map(Setting::name).anyMatch(name::equals)) {
      return spec.with(name, value);
    }
    if (needed) {
      throw new WrongInputException(
          "the player \"%s\" knows no safe tiles, so it cannot throw the safest; name one with"
                  .formatted(spec.type().id())
              + " settings of defence, such as watchful");
    }
    return spec;
  }

  TurnChoice turn(SeatView view, RandomStream random) {
    return player.turn(view, random);
  }

  /** What is done about a tile on offer, where one claim brings the hand nearest. */
  ClaimChoice claim(ClaimChoice nearest) {
    return what == BranchOption.NOTHING ? ClaimChoice.nothing() : nearest;
  }
}
