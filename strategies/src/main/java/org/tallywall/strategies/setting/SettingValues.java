package org.tallywall.strategies.setting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The values of all settings of a player, defaults filled in. */
public final class SettingValues {
  private final Map<String, Object> written = new LinkedHashMap<>();

  /**
   * Values.
   *
   * @param settings all settings of the player
   * @param changed those that differ from the defaults, by name, as a study writes them
   * @throws IllegalArgumentException if a name or value is unknown
   */
  public SettingValues(List<? extends Setting<?>> settings, Map<String, Object> changed) {
    for (Setting<?> setting : settings) {
      Object value = changed.getOrDefault(setting.name(), setting.standard());
      setting.read(value);
      written.put(setting.name(), value);
    }
    for (String name : changed.keySet()) {
      check(name);
    }
  }

  /**
   * All settings at their defaults.
   *
   * @param settings all settings of the player
   * @return the values
   */
  public static SettingValues standard(List<? extends Setting<?>> settings) {
    return new SettingValues(settings, Map.of());
  }

  /**
   * The value of a setting.
   *
   * @param setting the setting, as it was declared
   * @param <T> what its values are
   * @return its value
   * @throws IllegalArgumentException if the player has no such setting
   */
  public <T> T get(Setting<T> setting) {
    check(setting.name());
    return setting.read(written.get(setting.name()));
  }

  private void check(String name) {
    if (!written.containsKey(name)) {
      throw new IllegalArgumentException("there is no setting " + name);
    }
  }
}
