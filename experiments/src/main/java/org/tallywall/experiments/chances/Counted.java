package org.tallywall.experiments.chances;

/** The exact chances of a count, such as how many jokers are dealt. */
public interface Counted {
  /**
   * The smallest count that can be.
   *
   * @return 0 or more
   */
  int least();

  /**
   * The largest count that can be.
   *
   * @return {@link #least()} or more
   */
  int most();

  /**
   * The chance of one count.
   *
   * @param count any number; what cannot be has the chance 0
   * @return 0 to 1
   */
  double exactly(int count);

  /**
   * The chance of a count or a larger one.
   *
   * @param count any number
   * @return 0 to 1; exactly 1 for {@link #least()} or fewer
   */
  double atLeast(int count);

  /**
   * The average count.
   *
   * @return from {@link #least()} to {@link #most()}
   */
  double average();
}
