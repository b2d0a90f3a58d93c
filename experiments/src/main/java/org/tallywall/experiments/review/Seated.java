package org.tallywall.experiments.review;

import java.util.function.Supplier;
import org.tallywall.core.play.Player;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Who is thought to sit in a seat.
 *
 * @param name what readers call the player
 * @param kind what the list of players calls it
 * @param maker makes one for each table
 */
public record Seated(String name, String kind, Supplier<Player> maker) {
  /**
   * A player that is called what the list of players calls it.
   *
   * @param spec the player
   * @return who is thought to sit there
   */
  public static Seated of(PlayerSpec spec) {
    return new Seated(spec.type().id(), spec.type().id(), spec::make);
  }
}
