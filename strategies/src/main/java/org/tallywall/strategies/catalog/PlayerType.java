package org.tallywall.strategies.catalog;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.tallywall.core.play.Player;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * A kind of player that can be named in a study.
 *
 * @param id its name: letters a–z, digits and hyphens
 * @param description how it plays, in a line
 * @param settings what can be set, in the order listed
 * @param seesEverything whether it sees all racks and the wall: an upper bound for a table or a
 *     ladder, never a way of playing to be compared
 * @param factory makes one from the values of its settings; for each seat and each thread anew
 * @param origin the jar that it comes from, or nothing where it comes with the project
 */
public record PlayerType(
    String id,
    String description,
    List<Setting<?>> settings,
    boolean seesEverything,
    Function<SettingValues, Player> factory,
    Optional<JarOrigin> origin) {
  /** What is said of a player that sees all racks and the wall. */
  public static final String SEES_ALL = "sees all tiles";

  /**
   * A kind of player.
   *
   * @param id its name
   * @param description how it plays
   * @param settings what can be set
   * @param seesEverything whether it sees all racks and the wall
   * @param factory makes one
   * @param origin the jar that it comes from
   * @throws IllegalArgumentException if the id has other signs
   */
  public PlayerType {
    boolean ofClass = origin.isPresent() && id.equals(origin.get().word(origin.get().fileName()));
    if (!ofClass && !id.matches("[a-z][a-z0-9-]*")) {
      throw new IllegalArgumentException("a player's id is of a-z, 0-9 and hyphens, not " + id);
    }
    if (description.isBlank() || description.contains("\n")) {
      throw new IllegalArgumentException("the player " + id + " is not described in one line");
    }
    settings = List.copyOf(settings);
  }

  /**
   * A kind of player.
   *
   * @param id its name
   * @param description how it plays
   * @param settings what can be set
   * @param seesEverything whether it sees all racks and the wall
   * @param factory makes one
   */
  public PlayerType(
      String id,
      String description,
      List<Setting<?>> settings,
      boolean seesEverything,
      Function<SettingValues, Player> factory) {
    this(id, description, settings, seesEverything, factory, Optional.empty());
  }

  /**
   * A kind of player that sees what its seat sees.
   *
   * @param id its name
   * @param description how it plays
   * @param settings what can be set
   * @param factory makes one
   */
  public PlayerType(
      String id,
      String description,
      List<Setting<?>> settings,
      Function<SettingValues, Player> factory) {
    this(id, description, settings, false, factory);
  }

  /**
   * A kind of player without settings.
   *
   * @param id its name
   * @param description how it plays
   * @param settings an empty list
   * @param maker makes one
   */
  public PlayerType(
      String id, String description, List<Setting<?>> settings, Supplier<Player> maker) {
    this(id, description, settings, values -> maker.get());
  }

  /**
   * What makes one with all settings at their defaults.
   *
   * @return the maker
   */
  public Supplier<Player> maker() {
    return () -> factory.apply(new SettingValues(settings, Map.of()));
  }
}
