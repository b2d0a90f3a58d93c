package org.tallywall.experiments.cli;

import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.strategies.catalog.PlayerSpec;

/** What no sheet shows, and so no player may be asked who goes by it. */
final class HiddenTiles {
  private HiddenTiles() {}

  /**
   * Refuses a player that wants to see the table as it lies.
   *
   * @param player the player
   * @param remedy what to do instead, as in {@code name another player}
   * @return the player
   */
  static PlayerSpec refuseWhoSees(PlayerSpec player, String remedy) {
    if (player.make() instanceof SeesOpenTable) {
      String what =
          player.type().seesEverything()
              ? "sees all racks and the wall"
              : player.mark().orElseThrow();
      throw new WrongInputException(
          "\"%s\" %s, which no sheet shows; %s".formatted(player.type().id(), what, remedy));
    }
    return player;
  }
}
