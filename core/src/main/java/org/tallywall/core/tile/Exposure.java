package org.tallywall.core.tile;

/**
 * A group laid open with a claimed discard: tiles of one kind and the jokers that stand for it.
 *
 * @param kind the kind that the group shows, 0 to 34
 * @param size number of tiles, 3 to 6
 * @param jokers how many of them are jokers, 0 to {@code size - 1}
 */
public record Exposure(int kind, int size, int jokers) {
  /**
   * Checks the group (rule 3.3.5).
   *
   * @param kind the kind shown
   * @param size number of tiles
   * @param jokers how many are jokers
   * @throws IllegalArgumentException if the size or the jokers lie outside their range
   */
  public Exposure {
    if (kind < 0 || kind >= Tile.NATURALS) {
      throw new IllegalArgumentException("an exposure shows a natural kind, not " + kind);
    }
    if (size < 3 || size > 6) {
      throw new IllegalArgumentException("an exposure has 3 to 6 tiles, not " + size);
    }
    if (jokers < 0 || jokers >= size) {
      throw new IllegalArgumentException(
          "an exposure of " + size + " has 0 to " + (size - 1) + " jokers, not " + jokers);
    }
  }

  /**
   * The group, without making a new object for it.
   *
   * @param kind the kind shown, 0 to 34
   * @param size number of tiles, 3 to 6
   * @param jokers how many are jokers, 0 to {@code size - 1}
   * @return the one that stands for all equal ones
   */
  public static Exposure of(int kind, int size, int jokers) {
    return Exposures.of(kind, size, jokers);
  }

  /**
   * How many of the tiles are natural.
   *
   * @return 1 to 6
   */
  public int naturals() {
    return size - jokers;
  }

  /**
   * The group after one joker was redeemed (rule 4.4.1).
   *
   * @return the group with one natural more and one joker less
   */
  public Exposure redeemed() {
    return of(kind, size, jokers - 1);
  }

  /** The exposure as one word, naturals first, as in {@code 333cJ}. */
  @Override
  public String toString() {
    return TileText.word(kind, naturals()) + "J".repeat(jokers);
  }
}
