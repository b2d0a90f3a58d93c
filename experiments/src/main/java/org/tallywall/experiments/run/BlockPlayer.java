package org.tallywall.experiments.run;

/** Plays blocks, one after the other. One object is used by one thread. */
public interface BlockPlayer {
  /**
   * Plays a block.
   *
   * @param block the block
   * @param state hears of every deal played, and says when to stop
   * @return what came out, or null where the run was stopped before the block's end
   * @throws PlayerFaultException if a player breaks down or answers illegally
   */
  BlockResult play(Block block, RunState state);
}
