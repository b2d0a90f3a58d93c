package org.tallywall.core.rules;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.Place;

/** Reads switches from JSON; whatever is not written has its default. */
public final class RulesReader {
  private RulesReader() {}

  /**
   * Reads the switches of an object.
   *
   * @param node an object with keys such as {@code wall.cold}, or null for all defaults
   * @param faults takes a fault for each unknown key or value, and for each that is not played yet
   * @return the rules; defaults where there are faults
   */
  public static TableRules read(Node node, Faults faults) {
    Map<String, Object> values = new LinkedHashMap<>();
    if (node != null && !(node.value() instanceof Node.Fields)) {
      faults.fault(node.place(), "rules are an object in braces, not " + node.kind());
    } else if (node != null) {
      Node.Fields fields = (Node.Fields) node.value();
      fields.values().forEach((key, value) -> read(key, value, fields.places(), values, faults));
    }
    return TableRules.of(values);
  }

  private static void read(
      String key, Node node, Map<String, Place> places, Map<String, Object> values, Faults faults) {
    List<String> keys = RuleSwitches.all().stream().map(RuleSwitch::key).toList();
    if (!keys.contains(key)) {
      faults.fault(
          places.get(key),
          "unknown switch \"%s\"; the nearest known one is \"%s\" (known: %s)"
              .formatted(key, Nearest.of(key, keys), String.join(", ", keys)));
      return;
    }
    RuleSwitch known = RuleSwitches.all().get(keys.indexOf(key));
    Object value = plain(node.value());
    if (value == null || !known.allows(value)) {
      faults.fault(
          node.place(),
          "the switch \"%s\" may be %s; not %s"
              .formatted(key, known.choices(), value == null ? node.kind() : value));
    } else if (known.isLater(value)) {
      faults.fault(
          node.place(),
          "not yet: \"%s\": %s is known but not played yet; leave it at %s"
              .formatted(key, value, known.standard()));
    } else {
      values.put(key, value);
    }
  }

  private static Object plain(Object value) {
    if (value instanceof BigDecimal number) {
      try {
        return number.intValueExact();
      } catch (ArithmeticException fraction) {
        return null;
      }
    }
    return value instanceof String || value instanceof Boolean ? value : null;
  }
}
