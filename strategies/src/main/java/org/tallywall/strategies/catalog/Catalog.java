package org.tallywall.strategies.catalog;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.OldWords;
import org.tallywall.core.text.Place;

/** The explicit list of players that studies can name. */
public final class Catalog {
  private final List<PlayerType> types;
  private final Optional<PlayerFinder> finder;
  private final Path folder;

  /**
   * A list of players.
   *
   * @param types the kinds in the order listed
   * @throws IllegalArgumentException if an id stands twice
   */
  public Catalog(List<PlayerType> types) {
    this(types, Optional.empty(), null);
    Set<String> ids = new HashSet<>();
    for (PlayerType type : types) {
      if (!ids.add(type.id())) {
        throw new IllegalArgumentException("two players are called " + type.id());
      }
    }
  }

  private Catalog(List<PlayerType> types, Optional<PlayerFinder> finder, Path folder) {
    this.types = List.copyOf(types);
    this.finder = finder;
    this.folder = folder;
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
   * The same list with somebody who finds players that are not listed.
   *
   * @param other finds them
   * @return a list that asks it
   */
  public Catalog with(PlayerFinder other) {
    return new Catalog(types, Optional.of(other), folder);
  }

  /**
   * The same list for a place from which paths to players hold.
   *
   * @param place the folder
   * @return a list that finds players such as {@code jar:my.jar!my.pkg.MyPlayer} from there, if it
   *     has a finder of them
   */
  public Catalog in(Path place) {
    return new Catalog(types, finder, place);
  }

  /**
   * The list with the players that the jars of a folder list.
   *
   * @param plugins the folder
   * @return a longer list
   * @throws WrongPlayerException if there are none, a jar has a fault, or an id is taken
   * @throws java.util.NoSuchElementException if the list has no finder
   */
  public Catalog withPlugins(Path plugins) {
    return with(finder.orElseThrow().all(plugins));
  }

  /**
   * The list with some players more.
   *
   * @param more the kinds
   * @return a longer list
   * @throws WrongPlayerException if an id is taken
   */
  public Catalog with(List<PlayerType> more) {
    List<PlayerType> all = new ArrayList<>(types);
    for (PlayerType type : more) {
      if (type(ownId(type).id()).isEmpty()) {
        all.add(type);
      }
    }
    return new Catalog(all, finder, folder);
  }

  private PlayerType ownId(PlayerType type) {
    Optional<PlayerType> known = type(type.id());
    if (known.isPresent() && !digest(known.get()).equals(digest(type))) {
      throw new WrongPlayerException(
          "\"%s\" lists a player \"%s\", but there is one by that name already; give it another id"
              .formatted(type.origin().map(JarOrigin::fileName).orElse("the list"), type.id()));
    }
    return type;
  }

  private static String digest(PlayerType type) {
    return type.origin().map(JarOrigin::digest).orElse("");
  }

  /**
   * A kind by what a study or a command calls it.
   *
   * @param word its id, or the way to it in a jar
   * @return the kind
   * @throws WrongPlayerException if there is none, or its jar has a fault
   */
  public PlayerType find(String word) {
    Optional<PlayerType> known = type(word);
    if (known.isPresent()) {
      return known.get();
    }
    if (folder == null || finder.filter(found -> found.knows(word)).isEmpty()) {
      throw new WrongPlayerException(unknown(word));
    }
    return ownId(finder.get().type(word, folder));
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
   * @param written the value of a study
   * @param faults takes a warning for an old word, and a fault for an unknown player or setting
   * @return the player, or null where it has a fault
   */
  public PlayerSpec read(Node written, Faults faults) {
    Node node = OldWords.renewed(written, faults);
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
      faults.fault(node.place(), "the object has no \"player\"; write one of " + ids());
      return null;
    }
    PlayerSpec spec = spec(id, named.place(), faults);
    PlayerSpec read = spec == null ? null : new SettingReader(spec.type(), faults).read(fields);
    return read == null ? null : tried(read, node.place(), faults);
  }

  private PlayerSpec spec(String id, Place place, Faults faults) {
    try {
      return new PlayerSpec(find(id), Map.of());
    } catch (WrongPlayerException wrong) {
      faults.fault(place, wrong.getMessage());
      return null;
    }
  }

  /** The player, if it can be made with its settings. */
  private PlayerSpec tried(PlayerSpec spec, Place place, Faults faults) {
    try {
      finder.ifPresent(found -> found.tryOut(spec));
      return spec;
    } catch (WrongPlayerException wrong) {
      faults.fault(place, wrong.getMessage());
      return null;
    }
  }

  /**
   * What to say about a name that no player has.
   *
   * @param id the name
   * @return a sentence with the nearest name and all of them
   */
  public String unknown(String id) {
    List<String> ids = types.stream().map(PlayerType::id).toList();
    return "unknown player \"%s\"%s".formatted(id, Nearest.advice(id, ids));
  }

  private String ids() {
    return String.join(", ", types.stream().map(PlayerType::id).toList());
  }
}
