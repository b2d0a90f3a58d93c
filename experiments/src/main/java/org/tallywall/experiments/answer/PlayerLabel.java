package org.tallywall.experiments.answer;

import java.math.BigDecimal;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * What a player is called in tables: its name, its settings where any differ from the usual, and
 * the mark of one that sees more than its seat may.
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
    String changed =
        player.changed().entrySet().stream()
            .map(setting -> setting.getKey() + " " + text(setting.getValue()))
            .collect(Collectors.joining(", "));
    String said =
        Stream.concat(Stream.of(changed), player.mark().stream())
            .filter(words -> !words.isEmpty())
            .collect(Collectors.joining("; "));
    return said.isEmpty() ? player.type().id() : player.type().id() + " (" + said + ")";
  }

  private static String text(Object value) {
    return value instanceof BigDecimal number ? number.toPlainString() : String.valueOf(value);
  }
}
