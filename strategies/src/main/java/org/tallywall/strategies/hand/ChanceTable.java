package org.tallywall.strategies.hand;

/**
 * Chances to find enough copies of a kind among some of the unseen tiles, which lie in no order:
 * drawing without putting back. Copy after copy of the kind is laid into the row of unseen tiles,
 * and falls among those looked at with the chance that is left there, so that whole numbers of
 * looks give the hypergeometric law (the waiting times of a tile among unseen ones follow from it)
 * and broken ones something between. Only what is asked for is worked out, by adding, multiplying
 * and dividing alone, so that every machine has the same numbers.
 */
final class ChanceTable {
  /** No kind has more copies than these, and no hand takes more tiles than one less. */
  static final int MOST_COPIES = 16;

  private static final int WIDTH = 16;

  /** By copies and then by how many of them are needed; 1 where none is, 0 where too many are. */
  private final double[] atLeast = new double[(MOST_COPIES + 1) * WIDTH];

  private final double[] exactly = new double[MOST_COPIES + 2];
  private double looks;
  private double tiles;
  private int known;

  /** No tile is looked at. */
  ChanceTable() {
    for (int copies = 0; copies <= MOST_COPIES; copies++) {
      atLeast[copies * WIDTH] = 1;
    }
    set(0, 1);
  }

  /**
   * Sets how many tiles are looked at.
   *
   * @param seen how many of the unseen tiles turn up, 0 or more
   * @param unseen how many tiles are unseen, 1 or more
   */
  void set(double seen, double unseen) {
    if (seen != looks || unseen != tiles) {
      looks = seen;
      tiles = unseen;
      known = 0;
      exactly[0] = 1;
    }
  }

  /**
   * The chance.
   *
   * @param needed copies needed, 0 to 15
   * @param copies copies among the unseen tiles, 0 to {@link #MOST_COPIES}
   * @return 0 to 1
   */
  double atLeast(int needed, int copies) {
    if (known < copies) {
      layUpTo(copies);
    }
    return atLeast[copies * WIDTH + needed];
  }

  private void layUpTo(int copies) {
    while (known < copies) {
      layOneMore();
      addUp();
    }
  }

  private void layOneMore() {
    double places = 1 / Math.max(1, tiles - known);
    double above = 0;
    for (int found = known; found >= 0; found--) {
      double among = (looks - found) * places;
      among = among > 1 ? 1 : among < 0 ? 0 : among;
      double hit = exactly[found] * among;
      exactly[found + 1] = above + hit;
      above = exactly[found] * (1 - among);
    }
    exactly[0] = above;
    known++;
  }

  private void addUp() {
    double sum = 0;
    int row = known * WIDTH;
    for (int needed = known; needed > 0; needed--) {
      sum += exactly[needed];
      if (needed < WIDTH) {
        atLeast[row + needed] = sum > 1 ? 1 : sum;
      }
    }
  }
}
