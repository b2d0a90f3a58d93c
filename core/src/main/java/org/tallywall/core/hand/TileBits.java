package org.tallywall.core.hand;

import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Counts of natural tiles as bits: this is the one place that says how.
 *
 * <p>A kind with {@code n} tiles has the lowest {@code n} bits of its field set. Kinds 0–33 have
 * fields of four bits, sixteen kinds to a word; the flower has sixteen bits of the third word, from
 * bit 8. So the smaller of two counts is an AND, and a sum over all kinds is a bit count. Counts
 * beyond the width of a field are cut to it: no more tiles than that can be held. Jokers have no
 * field.
 */
public final class TileBits {
  /** A bit for each natural kind. */
  static final long NATURALS = (1L << Tile.NATURALS) - 1;

  private static final int PLAIN_WIDTH = 4;
  private static final int PLAIN_PER_WORD = 16;
  private static final int FLOWER_SHIFT = 8;
  private static final int FLOWER_WIDTH = 16;

  /** Bits of kinds 0–15. */
  long w0;

  /** Bits of kinds 16–31. */
  long w1;

  /** Bits of kinds 32 and 33 and of the flower. */
  long w2;

  /** No tiles. */
  public TileBits() {}

  /** Takes all tiles out. */
  public void clear() {
    w0 = 0;
    w1 = 0;
    w2 = 0;
  }

  /**
   * Sets all counts from the natural tiles of a rack.
   *
   * @param rack any rack
   */
  public void set(Rack rack) {
    clear();
    for (long kinds = rack.kinds() & NATURALS; kinds != 0; kinds &= kinds - 1) {
      int kind = Long.numberOfTrailingZeros(kinds);
      put(kind, rack.held(kind));
    }
  }

  /**
   * The natural tiles of a rack as bits, for those who measure how fast they are scanned.
   *
   * @param rack any rack
   * @return three words
   */
  public static long[] words(Rack rack) {
    TileBits bits = new TileBits();
    bits.set(rack);
    return new long[] {bits.w0, bits.w1, bits.w2};
  }

  /**
   * Sets, for each natural kind of a rack, only the bit of the last tile held.
   *
   * @param rack any rack
   */
  public void setLast(Rack rack) {
    clear();
    for (long kinds = rack.kinds() & NATURALS; kinds != 0; kinds &= kinds - 1) {
      int kind = Long.numberOfTrailingZeros(kinds);
      int held = rack.held(kind);
      if (held <= width(kind)) {
        long bit = 1L << shift(kind) + held - 1;
        int word = word(kind);
        w0 |= word == 0 ? bit : 0;
        w1 |= word == 1 ? bit : 0;
        w2 |= word == 2 ? bit : 0;
      }
    }
  }

  /**
   * The kind to which a bit belongs.
   *
   * @param word 0, 1 or 2
   * @param bit the bit in that word
   * @return a natural kind
   */
  static int kind(int word, int bit) {
    return word == 2 && bit >= FLOWER_SHIFT
        ? Tile.FLOWER
        : word * PLAIN_PER_WORD + bit / PLAIN_WIDTH;
  }

  /**
   * Sets the count of a kind that has none yet.
   *
   * @param kind a natural kind, 0 to 34
   * @param count how many tiles, 0 or more
   */
  public void put(int kind, int count) {
    long field = field(kind, count);
    if (kind < PLAIN_PER_WORD) {
      w0 |= field;
    } else if (kind < 2 * PLAIN_PER_WORD) {
      w1 |= field;
    } else {
      w2 |= field;
    }
  }

  /**
   * Sets the count of a kind, whatever it was.
   *
   * @param kind a natural kind, 0 to 34
   * @param count how many tiles, 0 or more
   */
  void replace(int kind, int count) {
    long whole = field(kind, width(kind));
    int word = word(kind);
    w0 &= word == 0 ? ~whole : -1;
    w1 &= word == 1 ? ~whole : -1;
    w2 &= word == 2 ? ~whole : -1;
    put(kind, count);
  }

  /**
   * How many tiles of a kind a field can show.
   *
   * @param kind a natural kind, 0 to 34
   * @return 4, or 16 for flowers
   */
  static int width(int kind) {
    return kind == Tile.FLOWER ? FLOWER_WIDTH : PLAIN_WIDTH;
  }

  /**
   * The word in which a kind stands.
   *
   * @param kind a natural kind, 0 to 34
   * @return 0, 1 or 2
   */
  static int word(int kind) {
    return kind == Tile.FLOWER ? 2 : kind / PLAIN_PER_WORD;
  }

  /**
   * The bit in its word at which a kind's field begins.
   *
   * @param kind a natural kind, 0 to 34
   * @return 0 to 60
   */
  static int shift(int kind) {
    return kind == Tile.FLOWER ? FLOWER_SHIFT : kind % PLAIN_PER_WORD * PLAIN_WIDTH;
  }

  private static long field(int kind, int count) {
    return ((1L << Math.min(count, width(kind))) - 1) << shift(kind);
  }
}
