package org.tallywall.experiments.study;

import java.util.Optional;

/**
 * How much is played.
 *
 * @param seed the seed, 0 or more
 * @param deals number of deals, 1 or more; the most, where the study may stop before
 * @param records how many of the first deals are written down
 * @param blockSize deals in a block
 * @param until when the study may stop before its last deal
 * @param patience what the study bears of its players
 */
public record Extent(
    long seed, long deals, long records, int blockSize, Optional<Until> until, Patience patience) {
  /** Deals in a block, unless the design asks for another number. */
  public static final int BLOCK = 500;

  /** Most deals of a study: with four games each they still can be counted in 31 bits. */
  public static final long MOST_DEALS = 500_000_000;

  /**
   * A fixed number of deals in blocks of the usual size.
   *
   * @param seed the seed
   * @param deals number of deals
   * @param records how many of the first deals are written down
   */
  public Extent(long seed, long deals, long records) {
    this(seed, deals, records, BLOCK, Optional.empty(), Patience.USUAL);
  }

  /**
   * How many deals are really written down.
   *
   * @return the smaller of deals and records
   */
  public long recorded() {
    return Math.min(deals, records);
  }
}
