package org.tallywall.core.hand;

import java.util.Arrays;

/**
 * For each tile that a rack may gain, the hands that it brings on: the rows of a {@link Reach}
 * turned round, so that one tile more or less touches only the hands that want it.
 */
final class Postings {
  private static final int PLACES = 3 * Long.SIZE;

  private final int[][] wanting = new int[PLACES][];
  private final int[][] wantingNatural = new int[PLACES][];

  /**
   * Turns the rows of a reach round.
   *
   * @param reach the hands that stay possible
   */
  Postings(Reach reach) {
    for (int place = 0; place < PLACES; place++) {
      int bit = place % Long.SIZE;
      wanting[place] = rows(word(place, reach.need0, reach.need1, reach.need2), bit);
      wantingNatural[place] = rows(word(place, reach.strict0, reach.strict1, reach.strict2), bit);
    }
  }

  private static long[] word(int place, long[] w0, long[] w1, long[] w2) {
    int word = place / Long.SIZE;
    return word == 0 ? w0 : word == 1 ? w1 : w2;
  }

  private static int[] rows(long[] bits, int bit) {
    int[] rows = new int[bits.length];
    int count = 0;
    for (int at = 0; at < bits.length; at++) {
      if ((bits[at] >>> bit & 1) != 0) {
        rows[count++] = at;
      }
    }
    return Arrays.copyOf(rows, count);
  }

  /**
   * The hands that a further tile of a kind brings one tile nearer to being matched.
   *
   * @param kind a natural kind
   * @param copy which of its tiles: 1 for the first, at most the width of its field
   * @return their indices in the reach, ascending
   */
  int[] wanting(int kind, int copy) {
    return wanting[place(kind, copy)];
  }

  /**
   * The hands in which that tile must be natural.
   *
   * @param kind a natural kind
   * @param copy which of its tiles
   * @return their indices in the reach, ascending
   */
  int[] wantingNatural(int kind, int copy) {
    return wantingNatural[place(kind, copy)];
  }

  private static int place(int kind, int copy) {
    return TileBits.word(kind) * Long.SIZE + TileBits.shift(kind) + copy - 1;
  }
}
