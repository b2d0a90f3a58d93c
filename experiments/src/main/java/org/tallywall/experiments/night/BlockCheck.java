package org.tallywall.experiments.night;

import java.util.Arrays;
import java.util.concurrent.Callable;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.BlockPlayer;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.store.BlockStore;
import org.tallywall.experiments.store.Checkpoint;

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
    BlockPlayer player = ready.player(new Pulse());
    byte[] again = ready.codec().bytes(player.play(block, ready.state()));
    return Arrays.equals(again, stored.content()) ? Finding.SAME : Finding.DIFFERENT;
  }
}
