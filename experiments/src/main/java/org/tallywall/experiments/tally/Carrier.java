package org.tallywall.experiments.tally;

/**
 * Carries the numbers of a tally out of it or into it, always in the same order, so that one method
 * of a tally serves for writing and reading.
 */
public interface Carrier {
  /**
   * Carries a number.
   *
   * @param number the number as it is in the tally
   * @return the number that the tally is to have: the same when writing, the stored one when
   *     reading
   */
  long carry(long number);

  /**
   * Carries several numbers.
   *
   * @param numbers as they are in the tally; changed to what they are to be
   */
  default void carry(long[] numbers) {
    for (int at = 0; at < numbers.length; at++) {
      numbers[at] = carry(numbers[at]);
    }
  }

  /**
   * Carries counts of several things.
   *
   * @param names an enum that names the things
   * @param counts one for each, in their order; changed to what they are to be
   */
  default void carry(Class<? extends Enum<?>> names, long[] counts) {
    carry(counts);
  }

  /**
   * Carries the length of what comes next.
   *
   * @param length as it is in the tally
   * @return the length that is to be carried next, 0 or more
   */
  default int carryLength(int length) {
    return (int) carry(length);
  }

  /**
   * Says what the numbers to come are about. Nothing is carried; it is for those who describe the
   * order.
   *
   * @param name a word
   */
  default void part(String name) {}
}
