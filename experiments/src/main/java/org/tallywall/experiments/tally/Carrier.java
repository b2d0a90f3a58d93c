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
}
