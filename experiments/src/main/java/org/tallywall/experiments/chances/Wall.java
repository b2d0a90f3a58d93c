package org.tallywall.experiments.chances;

/**
 * How many draws are left in a wall from which four players draw in turn, if nobody calls.
 *
 * @param tiles the tiles left, 0 or more
 */
public record Wall(int tiles) {
  /** How many draw from it. */
  public static final int PLAYERS = 4;

  /**
   * Takes a wall.
   *
   * @param tiles the tiles left
   * @throws IllegalArgumentException if there are fewer than none
   */
  public Wall {
    if (tiles < 0) {
      throw new IllegalArgumentException("a wall has no fewer than 0 tiles, not " + tiles);
    }
  }

  /**
   * The draws that are left to one player.
   *
   * @param before how many others draw before her, 0 to 3
   * @return her draws
   * @throws IllegalArgumentException if {@code before} lies outside its range
   */
  public int drawsAfter(int before) {
    if (before < 0 || before >= PLAYERS) {
      throw new IllegalArgumentException("0 to 3 others draw before a player, not " + before);
    }
    return Math.max(0, tiles - before + PLAYERS - 1) / PLAYERS;
  }

  /**
   * What everybody has at least: the wall divided by four, rounded down (common practice, no
   * source).
   *
   * @return the draws of whoever draws last
   */
  public int byFour() {
    return tiles / PLAYERS;
  }
}
