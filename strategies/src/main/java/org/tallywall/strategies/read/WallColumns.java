package org.tallywall.strategies.read;

/**
 * Reads a row of a table whose columns are tiles left in the wall: the first at 10, the middle of
 * the last twenty, then one for every twenty more.
 */
public final class WallColumns {
  private static final int FIRST = 10;
  private static final int STEP = 20;

  private WallColumns() {}

  /**
   * The value of a row, straight lines between the columns and level beyond them.
   *
   * @param row values by column, at least one
   * @param wall tiles left in the wall
   * @return the value
   */
  public static double between(double[] row, int wall) {
    double place = (wall - FIRST) / (double) STEP;
    if (place <= 0) {
      return row[0];
    }
    int at = (int) place;
    return at >= row.length - 1
        ? row[row.length - 1]
        : row[at] + (place - at) * (row[at + 1] - row[at]);
  }
}
