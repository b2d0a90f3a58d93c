package org.tallywall.experiments.cli;

import java.util.Arrays;
import java.util.concurrent.Callable;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.BlockPlayer;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.run.StudyPlayer;
import org.tallywall.experiments.store.BlockCodec;
import org.tallywall.experiments.store.BlockStore;
import org.tallywall.experiments.store.Checkpoint;
import org.tallywall.experiments.study.Study;

/**
 * Plays a block once more and compares what comes out with what is stored.
 *
 * @param study the study
 * @param setup the card and the rules
 * @param store the stored blocks
 * @param codec turns results into bytes
 * @param block the block
 */
record BlockCheck(Study study, TableSetup setup, BlockStore store, BlockCodec codec, Block block)
    implements Callable<BlockCheck.Finding> {

  /** What a check found. */
  enum Finding {
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

    String words() {
      return words;
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
    BlockPlayer player = new StudyPlayer(study, setup, new Pulse());
    RunState state = StudyRunner.state(study);
    byte[] again = codec.bytes(player.play(block, state));
    return Arrays.equals(again, stored.content()) ? Finding.SAME : Finding.DIFFERENT;
  }
}
