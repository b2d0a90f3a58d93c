package org.tallywall.strategies.catalog;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.Place;
import org.tallywall.strategies.setting.Setting;

/**
 * Reads the settings of a player. They may be written by their full names, or in groups: {@code
 * "defense": {"hold-back": {"away-at-least": 3}}}. To write a setting of a step turns the step on.
 */
final class SettingReader {
  private final PlayerType type;
  private final Faults faults;
  private final Map<String, Object> changed = new LinkedHashMap<>();
  private final Set<String> named = new HashSet<>();

  SettingReader(PlayerType type, Faults faults) {
    this.type = type;
    this.faults = faults;
  }

  /** The player, or null where a setting has a fault. */
  PlayerSpec read(Node.Fields fields) {
    int before = faults.findings();
    group("", fields);
    return faults.findings() > before ? null : new PlayerSpec(type, changed);
  }

  private void group(String prefix, Node.Fields fields) {
    fields
        .values()
        .forEach(
            (name, node) -> {
              if (!prefix.isEmpty() || !name.equals("player")) {
                value(prefix + name, node, fields.places().get(name));
              }
            });
  }

  private void value(String name, Node node, Place place) {
    Optional<Setting<?>> setting = setting(name);
    if (node.value() instanceof Node.Fields inner) {
      if (setting.isPresent() && setting.get().standard() instanceof Boolean) {
        changed.putIfAbsent(name, true);
      } else if (type.settings().stream().noneMatch(s -> s.name().startsWith(name + "."))) {
        unknown(name, place);
        return;
      }
      group(name + ".", inner);
      return;
    }
    if (setting.isEmpty()) {
      unknown(name, place);
      return;
    }
    Object value = node.value() instanceof BigDecimal number ? Setting.plain(number) : node.value();
    if (value == null || !setting.get().allows(value)) {
      faults.fault(
          node.place(),
          "the setting \"%s\" is %s, not %s"
              .formatted(
                  name,
                  setting.get().range(),
                  value instanceof BigDecimal || value instanceof String ? value : node.kind()));
      return;
    }
    if (!named.add(name)) {
      faults.fault(place, "the setting \"%s\" is written twice; keep one of them".formatted(name));
      return;
    }
    turnStepOn(name);
    changed.put(name, value);
  }

  /** A setting of a step means that the step is wanted, unless it was turned off by name. */
  private void turnStepOn(String name) {
    int dot = name.lastIndexOf('.');
    if (dot > 0) {
      String step = name.substring(0, dot);
      if (setting(step).filter(s -> s.standard() instanceof Boolean).isPresent()) {
        changed.putIfAbsent(step, true);
      }
    }
  }

  private Optional<Setting<?>> setting(String name) {
    return type.settings().stream().filter(s -> s.name().equals(name)).findFirst();
  }

  private void unknown(String name, Place place) {
    List<String> names = type.settings().stream().map(Setting::name).toList();
    faults.fault(
        place,
        names.isEmpty()
            ? "the player \"%s\" has no setting \"%s\"; it has no settings"
                .formatted(type.id(), name)
            : "the player \"%s\" has no setting \"%s\"%s (all: tallywall players %s)"
                .formatted(type.id(), name, Nearest.hint(name, names), type.id()));
  }
}
