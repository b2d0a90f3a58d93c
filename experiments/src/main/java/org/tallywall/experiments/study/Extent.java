package org.tallywall.experiments.study;

import java.util.Optional;

/**
 * How much is played.
 *
 * @param seed the seed, 0 or more
 * @param deals number of deals, 1 or more; the most, where the study may stop before
 * @param firstPlanned the number of deals that was fixed before the run began, where it was changed
 *     afterwards; whoever did so may have looked at the results
 * @param records how many of the first deals are written down
 * @param blockSize deals in a block
 * @param until when the study may stop before its last deal
 * @param patience what the study bears of its players
 */
public record Extent(
    long seed,
    long deals,
    Optional<Long> firstPlanned,
    long records,
    int blockSize,
    Optional<Until> until,
    Patience patience) {
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
    this(seed, deals, Optional.empty(), records, BLOCK, Optional.empty(), Patience.USUAL);
  }

  /**
   * The same with another number of deals, of which nobody can say that it was fixed in advance.
   *
   * @param number the number
   * @param planned the number that was fixed before the run began
   * @return what is played then
   */
  public Extent changed(long number, long planned) {
    return new Extent(seed, number, Optional.of(planned), records, blockSize, until, patience);
  }

  /**
   * The number of deals that was fixed before the run began.
   *
   * @return 1 or more
   */
  public long planned() {
    return firstPlanned.orElse(deals);
  }

  /**
   * Whether the number of deals was changed after the run had begun.
   *
   * @return false where it is the one fixed in advance
   */
  public boolean changed() {
    return firstPlanned.isPresent();
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
