package org.tallywall.core.rules;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.tallywall.core.tile.TileSet;

/**
 * The rules that a table plays by, as typed values.
 *
 * @param tiles the tiles on the table
 * @param wall hot and cold wall, the last discard
 * @param charleston the passes
 * @param claims claiming a discard
 * @param jokers exchanging and discarding jokers
 * @param win declaring mahjong
 * @param dead dead hands
 * @param score payments
 * @param switches every switch with its value, in the fixed order
 */
public record TableRules(
    TileSet tiles,
    WallRules wall,
    PassRules charleston,
    ClaimRules claims,
    JokerRules jokers,
    WinRules win,
    DeadRules dead,
    ScoreRules score,
    Map<String, Object> switches) {
  /** The rules with every switch at its default. */
  public static final TableRules STANDARD = of(Map.of());

  /**
   * The rules.
   *
   * @param tiles the tiles on the table
   * @param wall hot and cold wall
   * @param charleston the passes
   * @param claims claiming
   * @param jokers jokers
   * @param win declaring
   * @param dead dead hands
   * @param score payments
   * @param switches every switch with its value
   */
  public TableRules {
    switches = Collections.unmodifiableMap(new LinkedHashMap<>(switches));
  }

  /**
   * The rules that differ from the defaults in some switches.
   *
   * @param changed switches by key; values as {@link RuleSwitch#allows} says
   * @return the rules
   * @throws IllegalArgumentException if a key or value is unknown or not played yet
   */
  public static TableRules of(Map<String, Object> changed) {
    for (String key : changed.keySet()) {
      if (RuleSwitches.find(key).isEmpty()) {
        throw new IllegalArgumentException(RuleSwitches.unknown(key));
      }
    }
    Map<String, Object> all = new LinkedHashMap<>();
    for (RuleSwitch known : RuleSwitches.all()) {
      String key = known.key();
      Object value = changed.containsKey(key) ? changed.get(key) : known.standard();
      String fault = known.fault(value, String.valueOf(value));
      if (fault != null) {
        throw new IllegalArgumentException(fault);
      }
      all.put(key, value);
    }
    Values values = new Values(all);
    return new TableRules(
        new TileSet(values.number("tiles.flowers"), values.number("tiles.jokers")),
        WallRules.of(values),
        PassRules.of(values),
        ClaimRules.of(values),
        JokerRules.of(values),
        WinRules.of(values),
        DeadRules.of(values),
        ScoreRules.of(values),
        all);
  }

  /**
   * These rules with one switch changed.
   *
   * @param key the switch
   * @param value its value
   * @return other rules
   */
  public TableRules with(String key, Object value) {
    Map<String, Object> changed = new LinkedHashMap<>(switches);
    changed.put(key, value);
    return of(changed);
  }

  /**
   * Typed access to the values of switches.
   *
   * @param all every switch with its value
   */
  record Values(Map<String, Object> all) {
    int number(String key) {
      return (Integer) all.get(key);
    }

    int numberOr(String key, String word, int otherwise) {
      return all.get(key) instanceof Integer number
          ? number
          : all.get(key).equals(word) ? otherwise : -1;
    }

    boolean flag(String key) {
      return (Boolean) all.get(key);
    }

    boolean is(String key, String word) {
      return all.get(key).equals(word);
    }

    <E extends Enum<E>> E choice(String key, Class<E> type) {
      return Enum.valueOf(type, (String) all.get(key));
    }
  }
}
