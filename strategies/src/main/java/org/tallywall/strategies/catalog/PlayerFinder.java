package org.tallywall.strategies.catalog;

import java.nio.file.Path;
import java.util.List;

/** Finds players that do not come with the project. */
public interface PlayerFinder {
  /**
   * Whether a word is written as such a player is named.
   *
   * @param word what a study or a command calls it
   * @return true if {@link #type} is the one to ask
   */
  boolean knows(String word);

  /**
   * A player by its word.
   *
   * @param word one that it knows
   * @param folder the folder from which paths in it hold
   * @return the player
   * @throws WrongPlayerException if there is none, or it has a fault
   */
  PlayerType type(String word, Path folder);

  /**
   * All players that a folder lists.
   *
   * @param folder the folder
   * @return at least one
   * @throws WrongPlayerException if there are none, or one has a fault
   */
  List<PlayerType> all(Path folder);

  /**
   * Makes a player once, so that one that cannot be made is known before a run.
   *
   * @param spec the player; nothing is done with one that comes with the project
   * @throws WrongPlayerException if it cannot be made
   */
  void tryOut(PlayerSpec spec);
}
