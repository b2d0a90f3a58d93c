package org.tallywall.experiments.tally;

/** Sum and sum of squares of one whole number a deal. */
public final class DealSums {
  private final ExactSum sum = new ExactSum();
  private final ExactSum squares = new ExactSum();

  /** No deals yet. */
  public DealSums() {}

  /**
   * Adds the number of one deal.
   *
   * @param number any number
   */
  public void add(long number) {
    sum.add(number);
    squares.addSquare(number);
  }

  /** Carries all numbers out or in. */
  void carry(Carrier carrier) {
    sum.carry(carrier);
    squares.carry(carrier);
  }

  /**
   * Adds the sums of other deals.
   *
   * @param other the other sums
   */
  public void add(DealSums other) {
    sum.add(other.sum);
    squares.add(other.squares);
  }

  /**
   * The sum.
   *
   * @return over all deals
   */
  public ExactSum sum() {
    return sum;
  }

  /**
   * The sum of squares.
   *
   * @return over all deals
   */
  public ExactSum squares() {
    return squares;
  }
}
