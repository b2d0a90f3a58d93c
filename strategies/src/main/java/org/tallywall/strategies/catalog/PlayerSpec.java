package org.tallywall.strategies.catalog;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.tallywall.core.play.Player;

/**
 * A player as a study names it: its kind and the settings that differ from the defaults.
 *
 * @param type the kind
 * @param settings the settings written, in the order written; empty for none
 */
public record PlayerSpec(PlayerType type, Map<String, Object> settings) {
  /**
   * A player.
   *
   * @param type the kind
   * @param settings the settings written
   */
  public PlayerSpec {
    settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
  }

  /**
   * Makes the player.
   *
   * @return a new player, for one seat
   */
  public Player make() {
    return type.maker().get();
  }

  /**
   * The player as it is written in studies and records.
   *
   * @return its id alone, or a map of {@code player} and the settings
   */
  public Object written() {
    if (settings.isEmpty()) {
      return type.id();
    }
    Map<String, Object> whole = new LinkedHashMap<>();
    whole.put("player", type.id());
    whole.putAll(settings);
    return whole;
  }
}
