package org.tallywall.strategies.habit;

/** What a hand may hope for in points, by its distance and the tiles left in the wall. */
final class Hopes {
  /** Points of a usual win: a line of 25, won half on discards and half by oneself. */
  private static final double USUAL_WIN = 125;

  private static final double[] CHANCE = {1, 0.55, 0.40, 0.27, 0.16, 0.09, 0.05};
  private static final int LONG = 60;

  private Hopes() {}

  /**
   * Points hoped for.
   *
   * @param away distance of the rack after the discard, 0 to 14 or more
   * @param wall tiles left in the wall
   * @return 0 to 125
   */
  static double points(int away, int wall) {
    double chance = CHANCE[Math.min(away, CHANCE.length - 1)];
    double left = Math.min(1, wall / (double) LONG);
    for (int step = 0; step < Math.min(away, CHANCE.length - 1); step++) {
      chance *= Math.min(1, 0.5 + 0.5 * left);
    }
    return USUAL_WIN * chance;
  }
}
