package org.tallywall.experiments.run;

import java.util.List;
import org.tallywall.experiments.tally.TableTally;

/**
 * What came out of a block.
 *
 * @param block the block
 * @param tally what was counted
 * @param records the games to be kept, one line of JSON each, in the order of deals
 */
public record BlockResult(Block block, TableTally tally, List<String> records) {
  /**
   * Copies the list.
   *
   * @param block the block
   * @param tally what was counted
   * @param records the games to be kept
   */
  public BlockResult {
    records = List.copyOf(records);
  }
}
