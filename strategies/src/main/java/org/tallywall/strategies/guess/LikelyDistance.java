package org.tallywall.strategies.guess;

import org.tallywall.core.random.RandomStream;

/**
 * How many tiles the rack of another player is away from its nearest hand, by the exposures that it
 * shows and the tiles left in the wall.
 *
 * <p>Counted in 600 games of four {@code watchful} on the practice card, each opponent at about
 * every seventh turn of one seat. Other cards and players will differ somewhat.
 */
final class LikelyDistance {
  /** From so many tiles in the wall on the next row holds. */
  private static final int[] WALL = {20, 40, 60, 80};

  /** By exposures, then by the wall: how many of a hundred racks are 1, 2, 3... tiles away. */
  private static final int[][][] IN_100 = {
    {
      {10, 25, 14, 15, 17, 11, 8},
      {11, 31, 13, 13, 15, 8, 9},
      {10, 20, 22, 25, 12, 8, 3},
      {2, 13, 17, 28, 25, 11, 4},
      {1, 3, 13, 21, 31, 24, 7}
    },
    {
      {10, 12, 19, 15, 30, 11, 3},
      {22, 22, 17, 18, 11, 6, 4},
      {16, 20, 24, 23, 12, 4, 1},
      {7, 17, 27, 25, 18, 5, 1},
      {4, 11, 19, 27, 26, 12, 1}
    },
    {
      {16, 40, 11, 16, 8, 9, 0},
      {27, 34, 11, 14, 9, 4, 1},
      {21, 36, 24, 13, 5, 1, 0},
      {14, 38, 31, 13, 4, 0, 0},
      {7, 20, 33, 27, 9, 4, 0}
    },
    {
      {40, 45, 10, 5, 0, 0, 0},
      {45, 38, 11, 6, 0, 0, 0},
      {40, 40, 12, 8, 0, 0, 0},
      {40, 40, 15, 5, 0, 0, 0},
      {35, 40, 20, 5, 0, 0, 0}
    }
  };

  private LikelyDistance() {}

  /**
   * How many racks of some hundred are so far away.
   *
   * @param exposures exposures shown, 0 to 4
   * @param wall tiles left in the wall
   * @param away tiles away, 1 or more
   * @return 0 or more; the same row that {@link #draw} draws from
   */
  static int inHundred(int exposures, int wall, int away) {
    int[] row = row(exposures, wall);
    return away < 1 || away > row.length ? 0 : row[away - 1];
  }

  private static int[] row(int exposures, int wall) {
    int band = 0;
    while (band < WALL.length && wall >= WALL[band]) {
      band++;
    }
    return IN_100[Math.min(exposures, IN_100.length - 1)][band];
  }

  /**
   * A distance.
   *
   * @param exposures exposures shown, 0 to 4
   * @param wall tiles left in the wall
   * @param random draws it
   * @return tiles away, 1 to 7
   */
  static int draw(int exposures, int wall, RandomStream random) {
    int[] row = row(exposures, wall);
    int left = random.below(100);
    int away = 1;
    while (away < row.length && left >= row[away - 1]) {
      left -= row[away - 1];
      away++;
    }
    return away;
  }
}
