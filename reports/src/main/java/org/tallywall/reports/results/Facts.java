package org.tallywall.reports.results;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** The fields of a small JSON file, in the order written. A field that is not there is no error. */
public final class Facts {
  private final Map<String, Object> fields;

  private Facts(Map<String, Object> fields) {
    this.fields = fields;
  }

  /**
   * Takes the fields of an object.
   *
   * @param fields the object as it was read
   * @return its values: texts, numbers, truth values, maps, lists
   */
  static Facts of(Map<?, ?> fields) {
    Map<String, Object> plain = new LinkedHashMap<>();
    fields.forEach((name, value) -> plain.put((String) name, plain(value)));
    return new Facts(plain);
  }

  private static Object plain(Object value) {
    if (value instanceof Map<?, ?> fields) {
      return of(fields).fields;
    } else if (value instanceof List<?> items) {
      List<Object> list = new ArrayList<>();
      items.forEach(item -> list.add(plain(item)));
      return list;
    } else if (value instanceof BigInteger whole) {
      return new BigDecimal(whole);
    }
    return value;
  }

  /**
   * A text.
   *
   * @param name the field
   * @return its text, or an empty one if it is not there or no text
   */
  public String text(String name) {
    return fields.get(name) instanceof String text ? text : "";
  }

  /**
   * A number.
   *
   * @param name the field
   * @return the number, or none if it is not there or no number
   */
  public Optional<BigDecimal> number(String name) {
    return fields.get(name) instanceof BigDecimal number ? Optional.of(number) : Optional.empty();
  }

  /**
   * A whole number.
   *
   * @param name the field
   * @return the number, or none if it is not there or no whole number of 64 bits
   */
  public OptionalLong whole(String name) {
    try {
      Optional<BigDecimal> number = number(name);
      return number.isPresent()
          ? OptionalLong.of(number.get().longValueExact())
          : OptionalLong.empty();
    } catch (ArithmeticException notWhole) {
      return OptionalLong.empty();
    }
  }

  /**
   * Whether there is a field.
   *
   * @param name the field
   * @return true if it is there, whatever it holds
   */
  public boolean has(String name) {
    return fields.containsKey(name);
  }

  /**
   * A list.
   *
   * @param name the field
   * @return its values: texts, numbers, truth values, maps, lists; empty if it is no list
   */
  public List<Object> list(String name) {
    return fields.get(name) instanceof List<?> list ? new ArrayList<>(list) : List.of();
  }

  /**
   * The fields of an object within.
   *
   * @param name the field
   * @return its fields; none if it is no object
   */
  public Map<String, Object> object(String name) {
    Map<String, Object> inner = new LinkedHashMap<>();
    if (fields.get(name) instanceof Map<?, ?> map) {
      map.forEach((key, value) -> inner.put((String) key, value));
    }
    return inner;
  }

  /**
   * All fields.
   *
   * @return a copy, in the order written
   */
  public Map<String, Object> all() {
    return new LinkedHashMap<>(fields);
  }
}
