package org.tallywall.experiments.run;

/**
 * A piece of a study: some deals in a row. What comes out of a block depends on the study and the
 * block's number alone.
 *
 * @param number the block's number, from 0
 * @param firstDeal its first deal
 * @param deals how many deals, 1 or more
 */
public record Block(long number, long firstDeal, int deals) {
  /** Deals in a block; the last one of a study may have fewer. */
  public static final int SIZE = 500;

  /**
   * How many blocks a study has.
   *
   * @param deals deals of the study
   * @return 1 or more
   */
  public static long count(long deals) {
    return (deals + SIZE - 1) / SIZE;
  }

  /**
   * A block of a study.
   *
   * @param number its number
   * @param deals deals of the study
   * @return the block
   */
  public static Block of(long number, long deals) {
    long first = number * SIZE;
    return new Block(number, first, (int) Math.min(SIZE, deals - first));
  }
}
