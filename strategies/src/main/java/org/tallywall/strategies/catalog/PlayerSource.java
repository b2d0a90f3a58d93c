package org.tallywall.strategies.catalog;

import java.util.List;

/**
 * Players from a jar of a user's own. A class that implements this, is public, has a public
 * constructor without parameters and is named in the jar's {@code
 * META-INF/services/org.tallywall.strategies.catalog.PlayerSource} gives its players names,
 * descriptions and settings, so that they are listed and can be named like those that come with the
 * project.
 */
public interface PlayerSource {
  /**
   * The kinds of players.
   *
   * @return at least one; their ids differ from each other and from those of the project
   */
  List<PlayerType> players();
}
