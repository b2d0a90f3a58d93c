package org.tallywall.strategies.habit;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The values of all settings of a player, defaults filled in. */
public final class SettingValues {
  private final Map<String, Object> values = new LinkedHashMap<>();

  /**
   * Values.
   *
   * @param settings all settings of the player
   * @param changed those that differ from the defaults, by name
   * @throws IllegalArgumentException if a name or value is unknown
   */
  public SettingValues(List<Setting> settings, Map<String, Object> changed) {
    for (Setting setting : settings) {
      Object value = changed.getOrDefault(setting.name(), setting.standard());
      if (!setting.allows(value)) {
        throw new IllegalArgumentException(setting.name() + " is " + setting.range());
      }
      values.put(setting.name(), value);
    }
    for (String name : changed.keySet()) {
      if (!values.containsKey(name)) {
        throw new IllegalArgumentException("there is no setting " + name);
      }
    }
  }

  /**
   * All settings at their defaults.
   *
   * @param settings all settings of the player
   * @return the values
   */
  public static SettingValues standard(List<Setting> settings) {
    return new SettingValues(settings, Map.of());
  }

  /**
   * Whether a setting is on.
   *
   * @param name its name
   * @return its value
   */
  public boolean flag(String name) {
    return (Boolean) value(name);
  }

  /**
   * A whole number.
   *
   * @param name its name
   * @return its value
   */
  public int whole(String name) {
    return ((BigDecimal) value(name)).intValueExact();
  }

  /**
   * A number.
   *
   * @param name its name
   * @return its value
   */
  public double number(String name) {
    return ((BigDecimal) value(name)).doubleValue();
  }

  /**
   * A word.
   *
   * @param name its name
   * @return its value
   */
  public String word(String name) {
    return (String) value(name);
  }

  private Object value(String name) {
    Object value = values.get(name);
    if (value == null) {
      throw new IllegalArgumentException("there is no setting " + name);
    }
    return value;
  }
}
