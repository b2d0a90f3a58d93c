package org.tallywall.strategies.catalog;

import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.Player;

/**
 * A kind of player that can be named in a study.
 *
 * @param id its name: letters a–z, digits and hyphens
 * @param description how it plays, in a line
 * @param settings what can be set, in the order listed
 * @param maker makes one
 */
public record PlayerType(
    String id, String description, List<Setting> settings, Supplier<Player> maker) {
  /**
   * A kind of player.
   *
   * @param id its name
   * @param description how it plays
   * @param settings what can be set
   * @param maker makes one
   */
  public PlayerType {
    if (!id.matches("[a-z][a-z0-9-]*")) {
      throw new IllegalArgumentException("a player's id is of a-z, 0-9 and hyphens, not " + id);
    }
    settings = List.copyOf(settings);
  }
}
