package org.tallywall.core.text;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Words of studies and players that are written otherwise today, and still understood: names of
 * fields, whole or up to a dot, and names of settings where a study names one.
 */
public final class OldWords {
  private static final Map<String, String> TODAY =
      Map.of("defence", "defense", "faults-borne", "failed-deals-allowed");

  /** The field whose value is a setting's name. */
  private static final String NAMES_A_SETTING = "setting";

  private final Set<String> met = new LinkedHashSet<>();
  private final Faults faults;

  private OldWords(Faults faults) {
    this.faults = faults;
  }

  /**
   * The same value with today's words. A name is left as it is where today's stands beside it.
   *
   * @param root what was read
   * @param faults takes a warning for each old word, once
   * @return a copy, or the value itself where nothing changes
   */
  public static Node renewed(Node root, Faults faults) {
    return new OldWords(faults).node(root);
  }

  private Node node(Node node) {
    if (node.value() instanceof Node.Fields fields) {
      return new Node(node.place(), fields(fields));
    } else if (node.value() instanceof Node.Items items) {
      return new Node(
          node.place(), new Node.Items(items.values().stream().map(this::node).toList()));
    }
    return node;
  }

  private Node.Fields fields(Node.Fields fields) {
    LinkedHashMap<String, Node> values = new LinkedHashMap<>();
    Map<String, Place> places = new LinkedHashMap<>();
    fields
        .values()
        .forEach(
            (name, value) -> {
              Place place = fields.places().get(name);
              String today =
                  today(name).filter(other -> !fields.values().containsKey(other)).orElse(name);
              if (!today.equals(name)) {
                warn(name, place);
              }
              values.put(today, value(name, node(value)));
              places.put(today, place);
            });
    return new Node.Fields(values, places);
  }

  private Node value(String name, Node node) {
    if (name.equals(NAMES_A_SETTING) && node.value() instanceof String text) {
      Optional<String> today = today(text);
      if (today.isPresent()) {
        warn(text, node.place());
        return new Node(node.place(), today.get());
      }
    }
    return node;
  }

  /** The whole name with the word before its first dot as it is written today. */
  private static Optional<String> today(String name) {
    String word = first(name);
    return Optional.ofNullable(TODAY.get(word)).map(now -> now + name.substring(word.length()));
  }

  private static String first(String name) {
    return List.of(name.split("\\.", 2)).get(0);
  }

  private void warn(String name, Place place) {
    String word = first(name);
    if (met.add(word)) {
      faults.warn(place, "", "\"" + word + "\" is written \"" + TODAY.get(word) + "\" today");
    }
  }
}
