package org.tallywall.strategies.habit;

import org.tallywall.core.tile.Tile;

/**
 * Which tiles belong together as players speak of them when they pass: the winds, the dragons, the
 * flowers, and each suit. Which of them stand together on a card is not looked at.
 */
final class TileFamilies {
  /** How many there are. */
  static final int COUNT = 6;

  private static final int WINDS = 3;
  private static final int DRAGONS = 4;
  private static final int FLOWERS = 5;

  private TileFamilies() {}

  /**
   * Whether a family is the winds or the dragons.
   *
   * @param family as {@link #of} gives it
   */
  static boolean isHonors(int family) {
    return family == WINDS || family == DRAGONS;
  }

  /**
   * The family of a tile.
   *
   * @param kind a natural kind
   * @return 0 to 5; the same number for the same family
   */
  static int of(int kind) {
    if (Tile.isSuited(kind)) {
      return Tile.suitOf(kind);
    }
    return kind == Tile.FLOWER ? FLOWERS : kind >= Tile.RED ? DRAGONS : WINDS;
  }
}
