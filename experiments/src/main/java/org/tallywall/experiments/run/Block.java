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
  /**
   * How many blocks a study has.
   *
   * @param deals deals of the study
   * @param size deals in a block
   * @return 1 or more
   */
  public static long count(long deals, int size) {
    return (deals + size - 1) / size;
  }

  /**
   * A block of a study.
   *
   * @param number its number
   * @param deals deals of the study
   * @param size deals in a block; the last one may have fewer
   * @return the block
   */
  public static Block of(long number, long deals, int size) {
    long first = number * size;
    return new Block(number, first, (int) Math.min(size, deals - first));
  }
}
