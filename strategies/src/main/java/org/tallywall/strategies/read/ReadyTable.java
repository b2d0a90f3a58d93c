package org.tallywall.strategies.read;

/**
 * How often a discard was won on by an opponent of whom it is known that she would win on some
 * tile, by the exposures that she showed and the tiles left in the wall: what {@link RiskTable} has
 * where that is not known.
 *
 * <p>Fitted to 20,000 games of four {@code reckoner} players on the practice card (seed 20261210):
 * 300,000 pairs of a discard and an opponent who was ready, 10,987 wins, with {@link Evidence} as
 * it is. The last figure stands on three wins. On the Lantern Street card a quarter fewer to a
 * tenth more were won on in nearly all cells.
 */
final class ReadyTable {
  private static final double[][] WIN = {
    {0.3772, 0.2209, 0.1492, 0.0965, 0.0629},
    {3.4510, 3.0555, 2.7104, 2.1620, 1.5721},
    {2.3731, 2.2415, 2.0275, 1.5835, 1.4011},
    {2.4165, 1.6950, 1.5993, 1.4301, 1.3079}
  };

  private ReadyTable() {}

  /**
   * The factor for a win.
   *
   * @param ready whether there is a tile on which she would win
   * @param exposures exposures shown, 0 to 4; more than three count as three
   * @param wall tiles left in the wall
   * @return a chance for 0 exposures, else what the share waited for is multiplied by; 0 where she
   *     is not ready
   */
  static double win(boolean ready, int exposures, int wall) {
    return ready ? WallColumns.between(WIN[Math.min(exposures, WIN.length - 1)], wall) : 0;
  }
}
