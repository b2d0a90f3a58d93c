package org.tallywall.experiments.study;

/**
 * How much is played.
 *
 * @param seed the seed, 0 or more
 * @param deals number of deals, 1 or more
 * @param records how many of the first deals are written down
 */
public record Extent(long seed, long deals, long records) {
  /** Most deals of a study: with four games each they still can be counted in 31 bits. */
  public static final long MOST_DEALS = 500_000_000;

  /**
   * How many deals are really written down.
   *
   * @return the smaller of deals and records
   */
  public long recorded() {
    return Math.min(deals, records);
  }
}
