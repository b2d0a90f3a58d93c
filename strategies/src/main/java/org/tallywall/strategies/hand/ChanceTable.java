package org.tallywall.strategies.hand;

/**
 * Chances to find enough copies of a kind among some of the unseen tiles, which lie in no order:
 * drawing without putting back. Copy after copy of the kind is laid into the row of unseen tiles,
 * and falls among those looked at with the chance that is left there, so that whole numbers of
 * looks give the hypergeometric law (the waiting times of a tile among unseen ones follow from it)
 * and broken ones something between. Worked out when first asked for, by adding, multiplying and
 * dividing alone, so that every machine has the same numbers.
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
    if (known == 0) {
      layFour();
    }
    while (known < copies) {
      layOneMore();
      addUp();
    }
  }

  /** Lays the first four at once, for most kinds have so many; to the same numbers. */
  private void layFour() {
    double places = 1 / Math.max(1, tiles);
    double a0 = among(looks * places);
    double one = a0;
    double none = 1 - a0;
    atLeast[WIDTH + 1] = one;

    places = 1 / Math.max(1, tiles - 1);
    a0 = among(looks * places);
    double a1 = among((looks - 1) * places);
    double two = one * a1;
    one = one * (1 - a1) + none * a0;
    none *= 1 - a0;
    row(2, two, one, 0, 0);

    places = 1 / Math.max(1, tiles - 2);
    a0 = among(looks * places);
    a1 = among((looks - 1) * places);
    double a2 = among((looks - 2) * places);
    double three = two * a2;
    two = two * (1 - a2) + one * a1;
    one = one * (1 - a1) + none * a0;
    none *= 1 - a0;
    row(3, three, two, one, 0);

    places = 1 / Math.max(1, tiles - 3);
    a0 = among(looks * places);
    a1 = among((looks - 1) * places);
    a2 = among((looks - 2) * places);
    double a3 = among((looks - 3) * places);
    exactly[4] = three * a3;
    exactly[3] = three * (1 - a3) + two * a2;
    exactly[2] = two * (1 - a2) + one * a1;
    exactly[1] = one * (1 - a1) + none * a0;
    exactly[0] = none * (1 - a0);
    row(4, exactly[4], exactly[3], exactly[2], exactly[1]);
    known = 4;
  }

  /** Adds up chances of exactly so many, the most first. */
  private void row(int copies, double most, double next, double third, double fourth) {
    int at = copies * WIDTH + copies;
    double sum = most;
    atLeast[at] = sum;
    sum += next;
    atLeast[at - 1] = sum > 1 ? 1 : sum;
    if (copies > 2) {
      sum += third;
      atLeast[at - 2] = sum > 1 ? 1 : sum;
    }
    if (copies > 3) {
      sum += fourth;
      atLeast[at - 3] = sum > 1 ? 1 : sum;
    }
  }

  private static double among(double share) {
    return share > 1 ? 1 : share < 0 ? 0 : share;
  }

  private void layOneMore() {
    double places = 1 / Math.max(1, tiles - known);
    double above = 0;
    for (int found = known; found >= 0; found--) {
      double share = among((looks - found) * places);
      exactly[found + 1] = above + exactly[found] * share;
      above = exactly[found] * (1 - share);
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
