package org.tallywall.core.tile;

/**
 * The tiles on the table: four of each of 34 kinds, and a number of flowers and jokers (rule 1.1).
 *
 * @param flowers number of flowers, 4 to 16; usually 8
 * @param jokers number of jokers, 0 to 12; usually 8
 */
public record TileSet(int flowers, int jokers) {
  /** The usual set of 152 tiles: eight flowers, eight jokers. */
  public static final TileSet USUAL = new TileSet(8, 8);

  private static final int PLAIN_KINDS = 34;
  private static final int PLAIN_COPIES = 4;

  /**
   * Checks the counts.
   *
   * @param flowers number of flowers
   * @param jokers number of jokers
   * @throws IllegalArgumentException if a count lies outside its range
   */
  public TileSet {
    if (flowers < 4 || flowers > 16) {
      throw new IllegalArgumentException("flowers: " + flowers + " is not in 4 to 16");
    }
    if (jokers < 0 || jokers > 12) {
      throw new IllegalArgumentException("jokers: " + jokers + " is not in 0 to 12");
    }
  }

  /**
   * How many tiles of a kind there are.
   *
   * @param kind a kind, 0 to 35
   * @return 4, or the number of flowers or jokers
   */
  public int copies(int kind) {
    return kind < Tile.FLOWER ? PLAIN_COPIES : kind == Tile.FLOWER ? flowers : jokers;
  }

  /**
   * The number of all tiles.
   *
   * @return 136 and the flowers and jokers; 152 for the usual set
   */
  public int size() {
    return PLAIN_KINDS * PLAIN_COPIES + flowers + jokers;
  }

  /**
   * All tiles in the order of kinds: the order from which a wall is shuffled.
   *
   * @return a fresh array of kinds, of length {@link #size()}
   */
  public int[] tiles() {
    int[] all = new int[size()];
    int at = 0;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      for (int copy = 0; copy < copies(kind); copy++) {
        all[at++] = kind;
      }
    }
    return all;
  }
}
