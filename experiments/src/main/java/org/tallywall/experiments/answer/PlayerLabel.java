package org.tallywall.experiments.answer;

import java.math.BigDecimal;
import java.util.stream.Collectors;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * What a player is called in tables: its name, and its settings where any differ from the usual.
 */
public final class PlayerLabel {
  private PlayerLabel() {}

  /**
   * What a player is called.
   *
   * @param player the player
   * @return its name, with what is changed of it
   */
  public static String of(PlayerSpec player) {
    if (player.type().seesEverything()) {
      return player.type().id() + " (sees all tiles)";
    }
    if (player.changed().isEmpty()) {
      return player.type().id();
    }
    return player.changed().entrySet().stream()
        .map(setting -> setting.getKey() + " " + text(setting.getValue()))
        .collect(Collectors.joining(", ", player.type().id() + " (", ")"));
  }

  private static String text(Object value) {
    return value instanceof BigDecimal number ? number.toPlainString() : String.valueOf(value);
  }
}
