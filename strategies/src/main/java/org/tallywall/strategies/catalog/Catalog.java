package org.tallywall.strategies.catalog;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.Place;

/** The explicit list of players that studies can name. */
public final class Catalog {
  private final List<PlayerType> types;

  /**
   * A list of players.
   *
   * @param types the kinds in the order listed
   * @throws IllegalArgumentException if an id stands twice
   */
  public Catalog(List<PlayerType> types) {
    Set<String> ids = new HashSet<>();
    for (PlayerType type : types) {
      if (!ids.add(type.id())) {
        throw new IllegalArgumentException("two players are called " + type.id());
      }
    }
    this.types = List.copyOf(types);
  }

  /**
   * The players that come with the project.
   *
   * @return the list, weakest first
   */
  public static Catalog standard() {
    return new Catalog(Players.ALL);
  }

  /**
   * The kinds of players.
   *
   * @return in the order listed
   */
  public List<PlayerType> types() {
    return types;
  }

  /**
   * A kind by its id.
   *
   * @param id its name
   * @return the kind, or nothing
   */
  public Optional<PlayerType> type(String id) {
    return types.stream().filter(type -> type.id().equals(id)).findFirst();
  }

  /**
   * Reads a player: a name, or an object with {@code player} and settings.
   *
   * @param node the value of a study
   * @param faults takes a fault for an unknown player or setting
   * @return the player, or null where it has a fault
   */
  public PlayerSpec read(Node node, Faults faults) {
    if (node.value() instanceof String id) {
      return spec(id, node.place(), faults);
    }
    if (!(node.value() instanceof Node.Fields fields)) {
      faults.fault(
          node.place(), "a player is a name in quotes or an object in braces, not " + node.kind());
      return null;
    }
    Node named = fields.values().get("player");
    if (named == null || !(named.value() instanceof String id)) {
      faults.fault(node.place(), "the object names no \"player\"; write one of " + ids());
      return null;
    }
    PlayerSpec spec = spec(id, named.place(), faults);
    return spec == null ? null : new SettingReader(spec.type(), faults).read(fields);
  }

  private PlayerSpec spec(String id, Place place, Faults faults) {
    Optional<PlayerType> type = type(id);
    if (type.isEmpty()) {
      faults.fault(place, unknown(id));
      return null;
    }
    return new PlayerSpec(type.get(), Map.of());
  }

  /**
   * What to say about a name that no player has.
   *
   * @param id the name
   * @return a sentence with the nearest name and all of them
   */
  public String unknown(String id) {
    List<String> ids = types.stream().map(PlayerType::id).toList();
    return "unknown player \"%s\"; the nearest known one is \"%s\" (known: %s)"
        .formatted(id, Nearest.of(id, ids), ids());
  }

  private String ids() {
    return String.join(", ", types.stream().map(PlayerType::id).toList());
  }
}
