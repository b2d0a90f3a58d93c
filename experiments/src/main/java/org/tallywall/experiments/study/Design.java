package org.tallywall.experiments.study;

import java.util.List;
import org.tallywall.strategies.catalog.PlayerSpec;

/** How the games of a study are laid out. */
public sealed interface Design {
  /**
   * One fixed table, to see how lines and endings fall: one game a deal.
   *
   * @param players four players, East first
   */
  record Table(List<PlayerSpec> players) implements Design {
    /**
     * Copies the players.
     *
     * @param players four players
     * @throws IllegalArgumentException if there are not four
     */
    public Table {
      players = List.copyOf(players);
      if (players.size() != 4) {
        throw new IllegalArgumentException("four players sit at a table, not " + players.size());
      }
    }
  }
}
