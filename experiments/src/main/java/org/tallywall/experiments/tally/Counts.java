package org.tallywall.experiments.tally;

/**
 * Counts of several things, named by the constants of an enum.
 *
 * @param <E> names the things counted
 */
public final class Counts<E extends Enum<E>> {
  private final Class<E> names;
  private final long[] counts;

  /**
   * All counts zero.
   *
   * @param names names the things counted
   */
  public Counts(Class<E> names) {
    this.names = names;
    this.counts = new long[names.getEnumConstants().length];
  }

  /**
   * Counts one more.
   *
   * @param what the thing counted
   */
  public void add(E what) {
    counts[what.ordinal()]++;
  }

  /**
   * Adds a number.
   *
   * @param what the thing counted
   * @param number how many more
   * @throws ArithmeticException if the count becomes too large for 64 bits
   */
  public void add(E what, long number) {
    counts[what.ordinal()] = Math.addExact(counts[what.ordinal()], number);
  }

  /** Carries all numbers out or in. */
  void carry(Carrier carrier) {
    carrier.carry(names, counts);
  }

  /**
   * Adds other counts.
   *
   * @param other counts of the same things
   */
  public void add(Counts<E> other) {
    for (int at = 0; at < counts.length; at++) {
      counts[at] = Math.addExact(counts[at], other.counts[at]);
    }
  }

  /**
   * A count.
   *
   * @param what the thing counted
   * @return how many
   */
  public long get(E what) {
    return counts[what.ordinal()];
  }
}
