package org.tallywall.strategies.read;

/**
 * How often a discard was won on in games of four {@code reckoner} players, by the exposures that
 * the winner showed and the tiles left in the wall.
 *
 * <p>Measured on 6,000 games on the practice card, 1.1 million discards: the chance grew with the
 * share of the opponent's live hands that want the tile, and was nearly in proportion to it; the
 * table holds the factor. An opponent who shows nothing is not read, and the table holds the chance
 * itself. Other cards and players will differ somewhat.
 */
final class WinRisk {
  /** Tiles left in the wall at which the rows were measured: the middle of each third. */
  private static final int[] WALL = {16, 50, 83};

  private static final double[][] FACTOR = {
    {0.0080, 0.0023, 0.0002},
    {0.1000, 0.0400, 0.0080},
    {0.1600, 0.0950, 0.0400},
    {0.2500, 0.1800, 0.0800},
    {0.3000, 0.2200, 0.1000}
  };

  private WinRisk() {}

  /**
   * The factor, straight lines between the rows.
   *
   * @param exposures exposures shown, 0 to 4
   * @param wall tiles left in the wall
   * @return a chance for 0 exposures, else a chance for a tile that every live hand wants
   */
  static double factor(int exposures, int wall) {
    double[] row = FACTOR[exposures];
    if (wall <= WALL[0]) {
      return row[0];
    }
    if (wall >= WALL[2]) {
      return row[2];
    }
    int at = wall < WALL[1] ? 0 : 1;
    double part = (wall - WALL[at]) / (double) (WALL[at + 1] - WALL[at]);
    return row[at] + part * (row[at + 1] - row[at]);
  }
}
