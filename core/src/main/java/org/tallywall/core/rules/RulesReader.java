package org.tallywall.core.rules;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.tallywall.core.text.Faults;
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
    Optional<RuleSwitch> known = RuleSwitches.find(key);
    if (known.isEmpty()) {
      faults.fault(places.get(key), faults.enough() ? "unknown switch" : RuleSwitches.unknown(key));
      return;
    }
    Object value = plain(node.value());
    String fault = known.get().fault(value, value == null ? node.kind() : String.valueOf(value));
    if (fault == null) {
      values.put(key, value);
    } else {
      faults.fault(node.place(), fault);
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
