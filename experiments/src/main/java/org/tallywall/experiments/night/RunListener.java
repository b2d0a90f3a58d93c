package org.tallywall.experiments.night;

import java.nio.file.Path;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.store.Checkpoint;

/** Hears how the run of a study gets on. */
public interface RunListener {
  /**
   * The results folder is ready, and nothing has been played yet.
   *
   * @param folder the folder
   */
  default void opened(Path folder) {}

  /**
   * Something was found or done in the results folder that the user should know.
   *
   * @param sentence what it was
   */
  default void remark(String sentence) {}

  /**
   * Blocks are played from now on.
   *
   * @param state says how far the run is
   */
  default void begins(RunState state) {}

  /**
   * A stored block cannot be used and is played again.
   *
   * @param block the block
   * @param what what is wrong with it
   */
  default void spoiled(Block block, Checkpoint.State what) {}

  /** No more blocks are played. */
  default void ends() {}

  /**
   * All results are in the folder, and it is time for papers; report.html is to be written last.
   *
   * @param folder the folder
   */
  default void complete(Path folder) {}
}
