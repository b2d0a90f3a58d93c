package org.tallywall.reports.svg;

/** Moves labels along a line just so far that none covers another. */
final class Spread {
  private static final double GAP = 16;

  private Spread() {}

  /**
   * Finds middles near those wished for.
   *
   * @param wished the middles wished for, from left to right
   * @param widths the widths
   * @param low where the first may begin
   * @param high where the last may end; goes before {@code low} if there is no room for all
   * @return the middles
   */
  static double[] apart(double[] wished, double[] widths, double low, double high) {
    double[] middles = wished.clone();
    double free = low;
    for (int i = 0; i < middles.length; i++) {
      middles[i] = Math.max(middles[i], free + widths[i] / 2);
      free = middles[i] + widths[i] / 2 + GAP;
    }
    free = high;
    for (int i = middles.length - 1; i >= 0; i--) {
      middles[i] = Math.min(middles[i], free - widths[i] / 2);
      free = middles[i] - widths[i] / 2 - GAP;
    }
    return middles;
  }
}
