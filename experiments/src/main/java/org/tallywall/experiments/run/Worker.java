package org.tallywall.experiments.run;

import java.util.concurrent.atomic.AtomicBoolean;

/** One thread of a run: it takes block after block, and looks each up before it plays it. */
final class Worker {
  private final TableMaker tables;
  private final BlockQueue queue;
  private final RunState state;
  private final BlockKeeper keeper;
  private final Pulse pulse = new Pulse();
  private final AtomicBoolean left = new AtomicBoolean();
  private final Thread thread = new Thread(this::work, "player of blocks");
  private volatile long block = -1;

  Worker(TableMaker tables, BlockQueue queue, RunState state, BlockKeeper keeper) {
    this.tables = tables;
    this.queue = queue;
    this.state = state;
    this.keeper = keeper;
    thread.setDaemon(true);
  }

  /** Whether what is played in this thread has told the whole program to end. */
  boolean exits() {
    return ExitCall.isIn(thread.getStackTrace());
  }

  void start() {
    thread.start();
  }

  Pulse pulse() {
    return pulse;
  }

  /** The block being played, or -1. */
  long block() {
    return block;
  }

  boolean left() {
    return left.get();
  }

  /** Nobody waits for this thread any more. */
  void leave() {
    if (left.compareAndSet(false, true)) {
      queue.leave();
    }
  }

  private void work() {
    try {
      BlockPlayer table = tables.make(pulse);
      for (block = queue.take(); block < queue.blocks(); block = queue.take()) {
        Finished finished = kept(state.block(block));
        if (finished == null) {
          finished = play(table);
        }
        if (finished == null || left()) {
          return;
        }
        queue.finished(finished);
      }
    } catch (Throwable broken) {
      queue.fail(block, broken);
    } finally {
      leave();
    }
  }

  private Finished kept(Block wanted) {
    BlockResult result = keeper.kept(wanted);
    if (result == null) {
      return null;
    }
    state.dealsStored(wanted.deals());
    return new Finished(result, true);
  }

  private Finished play(BlockPlayer table) {
    BlockResult result = table.play(state.block(block), state);
    pulse.answered();
    if (result == null) {
      // A block is missing now, so whatever the others do, the run does not come to its end.
      state.abandon();
      return null;
    }
    return new Finished(result, false);
  }
}
