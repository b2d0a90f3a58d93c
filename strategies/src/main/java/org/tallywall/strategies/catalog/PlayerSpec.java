package org.tallywall.strategies.catalog;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.tallywall.core.play.Player;
import org.tallywall.strategies.habit.SettingValues;

/**
 * A player as a study names it: its kind and the settings that differ from the defaults.
 *
 * @param type the kind
 * @param settings the settings as written, groups as maps, in the order written
 * @param changed the same settings by their full names
 */
public record PlayerSpec(
    PlayerType type, Map<String, Object> settings, Map<String, Object> changed) {
  /**
   * A player.
   *
   * @param type the kind
   * @param settings the settings as written
   * @param changed the same by their full names
   */
  public PlayerSpec {
    settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    changed = Collections.unmodifiableMap(new LinkedHashMap<>(changed));
  }

  /**
   * A player whose settings stand in no groups.
   *
   * @param type the kind
   * @param settings the settings by their full names
   */
  public PlayerSpec(PlayerType type, Map<String, Object> settings) {
    this(type, settings, settings);
  }

  /**
   * Makes the player.
   *
   * @return a new player, for one seat
   */
  public Player make() {
    return type.factory().apply(new SettingValues(type.settings(), changed));
  }

  /**
   * The same player with one setting changed.
   *
   * @param name the setting's full name
   * @param value its value
   * @return the player; its settings are written by their full names
   * @throws IllegalArgumentException if there is no such setting, or it may not be that
   */
  public PlayerSpec with(String name, Object value) {
    Map<String, Object> more = new LinkedHashMap<>(changed);
    more.put(name, value);
    PlayerSpec spec = new PlayerSpec(type, more);
    spec.make();
    return spec;
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
