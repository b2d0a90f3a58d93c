package org.tallywall.core.hand;

/**
 * For each tile that a rack may gain, the hands that it brings on: the rows of a {@link Reach}
 * turned round, so that one tile more or less is one sweep over all hands, eight at a time. A hand
 * has a lane of {@link Lanes}, with a 1 where it wants that tile. Tiles that no hand wants have no
 * words at all.
 */
final class Postings {
  private static final int PLACES = 3 * Long.SIZE;

  private final long[][] wanting = new long[PLACES][];
  private final long[][] wantingNatural = new long[PLACES][];
  private final long[] naturals;

  /**
   * Turns the rows of a reach round.
   *
   * @param reach the hands that stay possible
   */
  Postings(Reach reach) {
    for (int place = 0; place < PLACES; place++) {
      int bit = place % Long.SIZE;
      wanting[place] = lanes(word(place, reach.need0, reach.need1, reach.need2), bit);
      wantingNatural[place] = lanes(word(place, reach.strict0, reach.strict1, reach.strict2), bit);
    }
    naturals = naturals(reach);
  }

  private static long[] word(int place, long[] w0, long[] w1, long[] w2) {
    int word = place / Long.SIZE;
    return word == 0 ? w0 : word == 1 ? w1 : w2;
  }

  private static long[] lanes(long[] bits, int bit) {
    long[] lanes = null;
    for (int at = 0; at < bits.length; at++) {
      if ((bits[at] >>> bit & 1) != 0) {
        lanes = lanes == null ? new long[Lanes.words(bits.length)] : lanes;
        lanes[at / Lanes.COUNT] += Lanes.at(at % Lanes.COUNT, 1);
      }
    }
    return lanes;
  }

  private static long[] naturals(Reach reach) {
    long[] lanes = new long[Lanes.words(reach.size())];
    for (int at = 0; at < reach.size(); at++) {
      int count =
          Long.bitCount(reach.strict0[at])
              + Long.bitCount(reach.strict1[at])
              + Long.bitCount(reach.strict2[at]);
      lanes[at / Lanes.COUNT] += Lanes.at(at % Lanes.COUNT, count);
    }
    return lanes;
  }

  /**
   * The hands that a further tile of a kind brings one tile nearer to being matched.
   *
   * @param kind a natural kind
   * @param copy which of its tiles: 1 for the first, at most the width of its field
   * @return a lane for each hand, 1 or 0; null where no hand wants it
   */
  long[] wanting(int kind, int copy) {
    return wanting[place(kind, copy)];
  }

  /**
   * The hands in which that tile must be natural.
   *
   * @param kind a natural kind
   * @param copy which of its tiles
   * @return a lane for each hand, 1 or 0; null where it must be in none
   */
  long[] wantingNatural(int kind, int copy) {
    return wantingNatural[place(kind, copy)];
  }

  /**
   * How many tiles of each hand must be natural.
   *
   * @return a lane for each hand
   */
  long[] naturals() {
    return naturals;
  }

  private static int place(int kind, int copy) {
    return TileBits.word(kind) * Long.SIZE + TileBits.shift(kind) + copy - 1;
  }
}
