package org.tallywall.core.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Takes the fields of one JSON object by name and notes a fault for each that is missing, of the
 * wrong kind or unknown. After a fault it goes on, so that all faults of a file come out at once.
 */
public final class FieldReader {
  private final Node node;
  private final Node.Fields fields;
  private final Faults faults;
  private final String id;

  /** How fields are written that have another name than their own. */
  private final Map<String, String> written = new LinkedHashMap<>();

  /** Fields that are not written, but that an unknown one most likely means. */
  private final Set<String> meant = new LinkedHashSet<>();

  /**
   * A reader of one object.
   *
   * @param node the value that should be an object
   * @param what what the object is, for messages, as in "a study"
   * @param faults takes the faults
   * @param known every field that the object may have
   */
  public FieldReader(Node node, String what, Faults faults, List<String> known) {
    this(node, what, faults, known, "");
  }

  /**
   * A reader of one object that belongs to a line of a card.
   *
   * @param node the value that should be an object
   * @param what what the object is, for messages
   * @param faults takes the faults
   * @param known every field that the object may have
   * @param id the line's id for messages, or empty
   */
  public FieldReader(Node node, String what, Faults faults, List<String> known, String id) {
    this(node, what, faults, known, Map.of(), id);
  }

  /**
   * A reader of one object whose fields may have other names as well.
   *
   * @param node the value that should be an object
   * @param what what the object is, for messages
   * @param faults takes the faults, one where a field is written by two names among them
   * @param known every field that the object may have
   * @param others other names of these fields, each with the field that it means
   * @param id the line's id for messages, or empty
   */
  public FieldReader(
      Node node,
      String what,
      Faults faults,
      List<String> known,
      Map<String, String> others,
      String id) {
    this.node = node;
    this.faults = faults;
    this.id = id;
    if (node.value() instanceof Node.Fields object) {
      this.fields = others.isEmpty() ? object : renamed(object, others);
      for (String name : fields.values().keySet()) {
        if (!known.contains(name)) {
          String unknown = "unknown field \"" + Shown.word(name) + "\" in " + what;
          faults.fault(object.places().get(name), id, unknown + faults.advice(name, known));
          faults.meant(name, known).ifPresent(meant::add);
        }
      }
    } else {
      this.fields = new Node.Fields(new LinkedHashMap<>(), Map.of());
      faults.fault(node.place(), id, what + " is an object in braces, not " + node.kind());
    }
  }

  private Node.Fields renamed(Node.Fields object, Map<String, String> others) {
    LinkedHashMap<String, Node> values = new LinkedHashMap<>();
    Map<String, Place> places = new LinkedHashMap<>();
    object
        .values()
        .forEach(
            (name, value) -> {
              String field = others.getOrDefault(name, name);
              Place place = object.places().get(name);
              if (values.putIfAbsent(field, value) == null) {
                places.put(field, place);
                written.put(field, name);
              } else {
                faults.fault(place, id, twice(written.get(field), name));
              }
            });
    return new Node.Fields(values, places);
  }

  /**
   * What to say of two names that mean the same.
   *
   * @param first the one that stands first
   * @param second the other one
   * @return what is wrong and what to do
   */
  public static String twice(String first, String second) {
    return String.format(
        Locale.ROOT,
        "\"%s\" and \"%s\" mean the same; take one out",
        Shown.word(first),
        Shown.word(second));
  }

  /**
   * Whether a field stands in the object.
   *
   * @param name its name
   * @return true if written, whatever its value
   */
  public boolean has(String name) {
    return fields.values().containsKey(name);
  }

  /**
   * The names of all fields written.
   *
   * @return in the order written
   */
  public List<String> names() {
    return new ArrayList<>(fields.values().keySet());
  }

  /**
   * A field's value as read.
   *
   * @param name its name
   * @return the value, or null where the field is not written
   */
  public Node node(String name) {
    return fields.values().get(name);
  }

  /**
   * Where a field's value stands.
   *
   * @param name its name
   * @return the place of the value, or of the object where the field is not written
   */
  public Place place(String name) {
    Node value = node(name);
    return value == null ? node.place() : value.place();
  }

  /**
   * Notes a fault at a field.
   *
   * @param name the field's name
   * @param message what is wrong and what to write instead
   */
  public void fault(String name, String message) {
    faults.fault(place(name), id, message);
  }

  /**
   * A field that must be there. Nothing more is said where a field was refused that most likely
   * means it.
   *
   * @param name its name
   * @param example what it may look like, for the message
   * @return whether it is there
   */
  public boolean require(String name, String example) {
    if (has(name)) {
      return true;
    }
    if (meant.contains(name)) {
      faults.saidEnough();
    } else {
      faults.fault(
          node.place(),
          id,
          String.format(Locale.ROOT, "the field \"%s\" is missing; write %s", name, example));
    }
    return false;
  }

  /**
   * A text.
   *
   * @param name the field's name
   * @param otherwise the value where the field is missing or no text
   * @return the text
   */
  public String text(String name, String otherwise) {
    return has(name) && expect(name, String.class, "a text in double quotes")
        ? (String) node(name).value()
        : otherwise;
  }

  /**
   * True or false.
   *
   * @param name the field's name
   * @param otherwise the value where the field is missing or neither
   * @return the value
   */
  public boolean flag(String name, boolean otherwise) {
    return has(name) && expect(name, Boolean.class, "true or false")
        ? (Boolean) node(name).value()
        : otherwise;
  }

  /**
   * A whole number.
   *
   * @param name the field's name
   * @param otherwise the value where the field is missing or out of range
   * @param least smallest value allowed
   * @param most largest value allowed
   * @return the number
   */
  public long whole(String name, long otherwise, long least, long most) {
    String wanted =
        most == Long.MAX_VALUE
            ? "a whole number, " + least + " or more"
            : "a whole number from " + least + " to " + most;
    if (!has(name) || !expect(name, BigDecimal.class, wanted)) {
      return otherwise;
    }
    BigDecimal number = (BigDecimal) node(name).value();
    boolean outside =
        number.compareTo(BigDecimal.valueOf(least)) < 0
            || number.compareTo(BigDecimal.valueOf(most)) > 0;
    if (outside || number.stripTrailingZeros().scale() > 0) {
      fault(
          name,
          String.format(Locale.ROOT, "\"%s\" is %s, not %s", written(name), wanted, shown(number)));
      return otherwise;
    }
    return number.longValueExact();
  }

  /**
   * A number between two bounds, both excluded.
   *
   * @param name the field's name
   * @param otherwise the value where the field is missing or out of range
   * @param above the lower bound
   * @param below the upper bound
   * @return the number
   */
  public double between(String name, double otherwise, double above, double below) {
    String wanted = "a number between " + shown(above) + " and " + shown(below);
    if (!has(name) || !expect(name, BigDecimal.class, wanted)) {
      return otherwise;
    }
    double number = ((BigDecimal) node(name).value()).doubleValue();
    if (number <= above || number >= below) {
      fault(
          name,
          String.format(
              Locale.ROOT,
              "\"%s\" is %s, not %s",
              written(name),
              wanted,
              shown((BigDecimal) node(name).value())));
      return otherwise;
    }
    return number;
  }

  /**
   * A list.
   *
   * @param name the field's name
   * @return its values, empty where the field is missing or no list
   */
  public List<Node> list(String name) {
    return has(name) && expect(name, Node.Items.class, "a list in square brackets")
        ? ((Node.Items) node(name).value()).values()
        : List.of();
  }

  private boolean expect(String name, Class<?> type, String wanted) {
    if (type.isInstance(node(name).value())) {
      return true;
    }
    fault(
        name,
        String.format(
            Locale.ROOT, "\"%s\" is %s, not %s", written(name), wanted, node(name).kind()));
    return false;
  }

  private String written(String name) {
    return written.getOrDefault(name, name);
  }

  private static String shown(BigDecimal number) {
    boolean longWinded = number.precision() > 30 || Math.abs((long) number.scale()) > 30;
    return longWinded ? "that" : number.toPlainString();
  }

  private static String shown(double bound) {
    return BigDecimal.valueOf(bound).stripTrailingZeros().toPlainString();
  }
}
