package org.tallywall.experiments.run;

import java.util.List;
import org.tallywall.experiments.tally.StudyTally;

/**
 * What came out of a block.
 *
 * @param block the block
 * @param tally what was counted
 * @param records the games to be kept, one line of JSON each, in the order of deals
 * @param faults what players spoiled, in the order of deals
 */
public record BlockResult(
    Block block, StudyTally tally, List<String> records, List<SpoiledDeal> faults) {
  /**
   * Copies the lists.
   *
   * @param block the block
   * @param tally what was counted
   * @param records the games to be kept
   * @param faults what players spoiled
   */
  public BlockResult {
    records = List.copyOf(records);
    faults = List.copyOf(faults);
  }
}
