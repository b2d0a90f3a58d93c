package org.tallywall.strategies.read;

/**
 * How often a discard was won on, or claimed for an exposure, by the exposures that the taker
 * showed and the tiles left in the wall.
 *
 * <p>Fitted to 3,000 games of four {@code reckoner} players on the practice card: 493,000 pairs of
 * a discard and an opponent, 1,606 wins, 14,871 exposures. Of an opponent who shows something both
 * were nearly in proportion to the share of what she may be waiting for that is the kind thrown
 * (power 0.92 for wins, 1.04 for claims, where 1 is taken), and the table holds the factor; of one
 * who shows nothing the lines are not worked out, and it holds the chance itself. {@link Evidence}
 * comes on top. Claims against three exposures were few, and two of their five factors are smoothed
 * by hand. Other cards and players will differ somewhat.
 */
final class RiskTable {
  private static final int ROWS = 4;

  private static final double[][] WIN = {
    {0.1002, 0.0480, 0.0150, 0.0028, 0.0002},
    {1.1634, 0.7750, 0.3981, 0.1461, 0.0397},
    {1.5043, 0.8688, 0.5620, 0.2916, 0.1946},
    {1.0232, 0.8034, 0.7815, 0.6161, 0.1613}
  };

  private static final double[][] CLAIM = {
    {0.1819, 0.1632, 0.1363, 0.0981, 0.0640},
    {2.7018, 2.3354, 2.1391, 1.8441, 1.5420},
    {0.7276, 0.8466, 0.7925, 0.7299, 0.6525},
    {0.1402, 0.1000, 0.1200, 0.1041, 0.1506}
  };

  private RiskTable() {}

  /**
   * The factor for a win.
   *
   * @param exposures exposures shown, 0 to 4; more than three count as three
   * @param wall tiles left in the wall
   * @return a chance for 0 exposures, else what the share waited for is multiplied by
   */
  static double win(int exposures, int wall) {
    return WallColumns.between(WIN[Math.min(exposures, ROWS - 1)], wall);
  }

  /**
   * The factor for an exposure.
   *
   * @param exposures exposures shown, 0 to 4; more than three count as three
   * @param wall tiles left in the wall
   * @return a chance for 0 exposures, else what the share waited for is multiplied by
   */
  static double claim(int exposures, int wall) {
    return WallColumns.between(CLAIM[Math.min(exposures, ROWS - 1)], wall);
  }
}
