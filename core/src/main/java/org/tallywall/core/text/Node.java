package org.tallywall.core.text;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A value of a JSON file with the place where it stands.
 *
 * @param place where the value begins
 * @param value a {@link String}, {@link BigDecimal}, {@link Boolean}, {@link Fields}, {@link Items}
 *     or null
 */
public record Node(Place place, Object value) {
  /**
   * An object's fields in the order written.
   *
   * @param values the values by name
   * @param places where each name stands
   */
  public record Fields(LinkedHashMap<String, Node> values, Map<String, Place> places) {}

  /**
   * An array's values.
   *
   * @param values the values in order
   */
  public record Items(List<Node> values) {}

  /**
   * What kind of value this is, in words.
   *
   * @return as in "a text" or "a whole number"
   */
  public String kind() {
    if (value instanceof String) {
      return "a text";
    } else if (value instanceof BigDecimal number) {
      return number.stripTrailingZeros().scale() <= 0 ? "a whole number" : "a number";
    } else if (value instanceof Boolean) {
      return "true or false";
    } else if (value instanceof Fields) {
      return "an object in braces";
    } else if (value instanceof Items) {
      return "a list in square brackets";
    }
    return "null";
  }
}
