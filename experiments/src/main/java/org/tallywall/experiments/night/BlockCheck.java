package org.tallywall.experiments.night;

import java.util.Arrays;
import java.util.concurrent.Callable;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.BlockResult;
import org.tallywall.experiments.run.Patient;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunEndingPlayerException;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.store.BlockStore;
import org.tallywall.experiments.store.Checkpoint;
import org.tallywall.experiments.study.Study;

/**
 * Plays a block once more and compares what comes out with what is stored.
 *
 * @param ready the study
 * @param store the stored blocks
 * @param block the block
 */
public record BlockCheck(ReadyStudy ready, BlockStore store, Block block)
    implements Callable<BlockCheck.Finding> {

  /** What a check found. */
  public enum Finding {
    /** The same bytes. */
    SAME("the same bytes"),
    /** Other bytes. */
    DIFFERENT("NOT what comes out now"),
    /** The file cannot be used. */
    DAMAGED("the file is damaged"),
    /** The file belongs to another run. */
    FOREIGN("the file belongs to another run"),
    /** The file holds other numbers than are counted now. */
    OUTDATED("stored by a version of tallywall that counts other things; check it with that one");

    private final String words;

    Finding(String words) {
      this.words = words;
    }

    /**
     * What was found, for readers.
     *
     * @return a few words
     */
    public String words() {
      return words;
    }
  }

  /** The block played once more; its players are waited for no longer than in a run. */
  private BlockResult played() {
    Pulse pulse = new Pulse();
    Study study = ready.study();
    RunLimits limits = RunLimits.of(1, study.extent().patience().decisionSeconds());
    try {
      return Patient.wait(pulse, limits, () -> ready.player(pulse).play(block, ready.state()));
    } catch (RunEndingPlayerException end) {
      throw new FailedException(new FaultWords(study).ended(end, study.source().study()), end);
    }
  }

  @Override
  public Finding call() {
    Checkpoint.Reading stored = store.read(block);
    if (!stored.good()) {
      return switch (stored.state()) {
        case FOREIGN -> Finding.FOREIGN;
        case OUTDATED -> Finding.OUTDATED;
        default -> Finding.DAMAGED;
      };
    }
    byte[] again = ready.codec().bytes(played());
    return Arrays.equals(again, stored.content()) ? Finding.SAME : Finding.DIFFERENT;
  }
}
