package org.tallywall.experiments.cli;

import java.util.List;
import org.tallywall.experiments.run.BlockResult;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.store.BlockCodec;
import org.tallywall.experiments.study.Study;

/** About how much room the files of a run take. */
final class DiskNeed {
  /** Most file systems give room to files in such pieces. */
  private static final long PIECE = 4_096;

  /** Bytes of a record, packed. */
  private static final long RECORD = 1_500;

  /** Bytes of all tables. */
  private static final long TABLES = 1 << 20;

  private DiskNeed() {}

  /** Bytes, rounded up generously. */
  static long of(Study study, BlockCodec codec) {
    RunState state = StudyRunner.state(study);
    BlockResult empty = new BlockResult(state.block(0), codec.empty(), List.of(), List.of());
    long block = codec.bytes(empty).length;
    long pieces = (block + PIECE - 1) / PIECE;
    return state.blocks() * pieces * PIECE + 2 * RECORD * study.extent().recorded() + TABLES;
  }
}
