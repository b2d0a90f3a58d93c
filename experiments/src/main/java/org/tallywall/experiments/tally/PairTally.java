package org.tallywall.experiments.tally;

import java.util.Arrays;
import org.tallywall.core.play.Seats;

/**
 * One measure of two ways of playing on the same deals. A deal's number is the sum over the studied
 * seats of the first way's value minus the second's; the sums by seat give levels and correlation.
 */
public final class PairTally {
  /** The sums of one studied seat: both values, their squares and their product. */
  public static final class BySeat {
    private final ExactSum first = new ExactSum();
    private final ExactSum second = new ExactSum();
    private final ExactSum firstSquared = new ExactSum();
    private final ExactSum secondSquared = new ExactSum();
    private final ExactSum product = new ExactSum();

    BySeat() {}

    void add(long a, long b) {
      first.add(a);
      second.add(b);
      firstSquared.addSquare(a);
      secondSquared.addSquare(b);
      product.add(Math.multiplyExact(a, b));
    }

    void carry(Carrier carrier) {
      first.carry(carrier);
      second.carry(carrier);
      firstSquared.carry(carrier);
      secondSquared.carry(carrier);
      product.carry(carrier);
    }

    void add(BySeat other) {
      first.add(other.first);
      second.add(other.second);
      firstSquared.add(other.firstSquared);
      secondSquared.add(other.secondSquared);
      product.add(other.product);
    }

    /**
     * The first way's values.
     *
     * @return their sum over the deals
     */
    public ExactSum first() {
      return first;
    }

    /**
     * The second way's values.
     *
     * @return their sum over the deals
     */
    public ExactSum second() {
      return second;
    }

    /**
     * The squares of the first way's values.
     *
     * @return their sum over the deals
     */
    public ExactSum firstSquared() {
      return firstSquared;
    }

    /**
     * The squares of the second way's values.
     *
     * @return their sum over the deals
     */
    public ExactSum secondSquared() {
      return secondSquared;
    }

    /**
     * The products of the two values.
     *
     * @return their sum over the deals
     */
    public ExactSum product() {
      return product;
    }
  }

  private final DealSums differences = new DealSums();
  private final BySeat[] seats = new BySeat[Seats.COUNT];
  private final long[] sizes = new long[2 * Seats.COUNT + 1];
  private long deals;
  private long differing;
  private long more;
  private long fewer;

  /** No deals yet. */
  public PairTally() {
    Arrays.setAll(seats, seat -> new BySeat());
  }

  /**
   * Counts a deal.
   *
   * @param first the first way's value at each studied seat
   * @param second the second way's, in the same order
   * @throws IllegalArgumentException if there are not as many of both, or more than four
   */
  public void addDeal(long[] first, long[] second) {
    if (first.length != second.length || first.length > Seats.COUNT) {
      throw new IllegalArgumentException("values of the same seats, four at most");
    }
    long difference = 0;
    boolean differs = false;
    for (int at = 0; at < first.length; at++) {
      seats[at].add(first[at], second[at]);
      difference += first[at] - second[at];
      differs |= first[at] != second[at];
    }
    differences.add(difference);
    deals++;
    differing += differs ? 1 : 0;
    if (Math.abs(difference) <= Seats.COUNT) {
      sizes[(int) difference + Seats.COUNT]++;
    }
    more += difference > 0 ? 1 : 0;
    fewer += difference < 0 ? 1 : 0;
  }

  /** Carries all numbers out or in. */
  void carry(Carrier carrier) {
    differences.carry(carrier);
    for (BySeat seat : seats) {
      seat.carry(carrier);
    }
    carrier.carry(sizes);
    deals = carrier.carry(deals);
    differing = carrier.carry(differing);
    more = carrier.carry(more);
    fewer = carrier.carry(fewer);
  }

  /**
   * Adds the deals of another tally.
   *
   * @param other of the same measure, ways and seats
   */
  public void add(PairTally other) {
    differences.add(other.differences);
    for (int at = 0; at < Seats.COUNT; at++) {
      seats[at].add(other.seats[at]);
    }
    for (int at = 0; at < sizes.length; at++) {
      sizes[at] += other.sizes[at];
    }
    deals += other.deals;
    differing += other.differing;
    more += other.more;
    fewer += other.fewer;
  }

  /**
   * The difference of each deal, summed over its seats.
   *
   * @return live sums
   */
  public DealSums differences() {
    return differences;
  }

  /**
   * The sums of one studied seat.
   *
   * @param at which of the studied seats, from 0
   * @return live sums
   */
  public BySeat seat(int at) {
    return seats[at];
  }

  /**
   * Deals counted.
   *
   * @return how many
   */
  public long deals() {
    return deals;
  }

  /**
   * Deals in which the two ways' values differ in at least one seat, also where the seats cancel.
   *
   * @return how many
   */
  public long differing() {
    return differing;
  }

  /**
   * Deals whose difference over all their seats has a given size. Where each seat counts for one or
   * nothing, these sizes hold every deal.
   *
   * @param difference −4 to 4
   * @return how many
   */
  public long ofSize(int difference) {
    return sizes[difference + Seats.COUNT];
  }

  /**
   * Deals in which the first way had more, all seats together.
   *
   * @return how many
   */
  public long more() {
    return more;
  }

  /**
   * Deals in which the first way had fewer, all seats together.
   *
   * @return how many
   */
  public long fewer() {
    return fewer;
  }
}
