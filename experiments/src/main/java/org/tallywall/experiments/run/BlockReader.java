package org.tallywall.experiments.run;

/** Takes the results of a run in the order of blocks. */
@FunctionalInterface
public interface BlockReader {
  /**
   * Takes the next result.
   *
   * @param result what came out of the block
   * @return whether further blocks are wanted
   */
  boolean read(BlockResult result);
}
