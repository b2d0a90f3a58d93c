package org.tallywall.core.hand;

/**
 * Small numbers, eight to a {@code long}, a byte each. All loops over them are of a kind that
 * compilers turn into vector instructions. Every number is 0 to 127, so that no carry leaves its
 * byte.
 */
final class Lanes {
  /** How many numbers a long holds. */
  static final int COUNT = Long.BYTES;

  /** The largest number. */
  static final int MOST = Byte.MAX_VALUE;

  private static final long ONES = 0x0101_0101_0101_0101L;
  private static final long HIGH = 0x8080_8080_8080_8080L;

  private Lanes() {}

  /**
   * The same number eight times.
   *
   * @param number 0 to 127
   * @return a word of it
   */
  static long all(int number) {
    return ONES * number;
  }

  /**
   * How many words some numbers take.
   *
   * @param numbers how many numbers
   * @return the number of words, the last one perhaps not full
   */
  static int words(int numbers) {
    return (numbers + COUNT - 1) / COUNT;
  }

  /**
   * One of the numbers.
   *
   * @param word eight numbers
   * @param lane which, 0 to 7
   * @return 0 to 127
   */
  static int get(long word, int lane) {
    return (int) (word >>> lane * Byte.SIZE) & MOST;
  }

  /**
   * A number put in the place of a 0.
   *
   * @param lane where, 0 to 7
   * @param number 0 to 127
   * @return a word to be added
   */
  static long at(int lane, int number) {
    return (long) number << lane * Byte.SIZE;
  }

  /**
   * Tells numbers within two limits.
   *
   * @param first eight numbers
   * @param firstLimit what {@link #limit} makes of their limit
   * @param second eight numbers
   * @param secondLimit what {@link #limit} makes of their limit
   * @return the high bit of each lane in which both are at most their limit
   */
  static long within(long first, long firstLimit, long second, long secondLimit) {
    return firstLimit - first & secondLimit - second & HIGH;
  }

  /**
   * A limit for {@link #within}.
   *
   * @param number 0 or more; what no lane exceeds is as good as any larger one
   * @return eight limits
   */
  static long limit(int number) {
    return all(Math.min(number, MOST - 1)) | HIGH;
  }

  /**
   * Whether any lane is within two limits.
   *
   * @param first numbers
   * @param firstLimit their limit
   * @param second as many numbers
   * @param secondLimit their limit
   * @param words how many words to look at
   * @return true if one is
   */
  static boolean anyWithin(
      long[] first, long firstLimit, long[] second, long secondLimit, int words) {
    long found = 0;
    for (int at = 0; at < words; at++) {
      found |= firstLimit - first[at] & secondLimit - second[at];
    }
    return (found & HIGH) != 0;
  }

  /**
   * Adds numbers, lane by lane.
   *
   * @param to changed in place
   * @param what as many words, or more
   * @param words how many words to change
   */
  static void add(long[] to, long[] what, int words) {
    for (int at = 0; at < words; at++) {
      to[at] += what[at];
    }
  }

  /**
   * Takes numbers off, lane by lane.
   *
   * @param from changed in place
   * @param what as many words, or more
   * @param words how many words to change
   */
  static void subtract(long[] from, long[] what, int words) {
    for (int at = 0; at < words; at++) {
      from[at] -= what[at];
    }
  }

  /**
   * Adds some numbers and takes others off, lane by lane.
   *
   * @param to changed in place
   * @param more what to add
   * @param less what to take off
   * @param words how many words to change
   */
  static void exchange(long[] to, long[] more, long[] less, int words) {
    for (int at = 0; at < words; at++) {
      to[at] = to[at] + more[at] - less[at];
    }
  }
}
