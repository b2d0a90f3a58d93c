package org.tallywall.experiments.run;

/** Keeps results of blocks beyond the end of the process. Safe for use by several threads. */
public interface BlockKeeper {
  /** Keeps nothing. */
  BlockKeeper NONE =
      new BlockKeeper() {
        @Override
        public BlockResult kept(Block block) {
          return null;
        }

        @Override
        public void keep(BlockResult result) {
          // Nothing is kept.
        }
      };

  /**
   * Looks for the result of a block.
   *
   * @param block the block
   * @return its result, or null where the block must be played
   */
  BlockResult kept(Block block);

  /**
   * Keeps a result.
   *
   * @param result what came out of a block
   * @throws org.tallywall.experiments.error.FailedException if it cannot be kept
   */
  void keep(BlockResult result);
}
