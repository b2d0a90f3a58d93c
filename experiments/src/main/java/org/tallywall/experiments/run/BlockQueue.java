package org.tallywall.experiments.run;

import java.util.ArrayDeque;
import java.util.Deque;

/** Which blocks are to be played, and which are done: what the threads of a run have in common. */
final class BlockQueue {
  private static final long LOOK_MILLIS = 100;

  private final RunState state;
  private final long blocks;
  private final long mostAhead;
  private final Deque<Finished> finished = new ArrayDeque<>();
  private int busy;
  private long next;
  private long handedOver;
  private long failedBlock = Long.MAX_VALUE;
  private Throwable failure;

  BlockQueue(RunState state, int threads) {
    this.state = state;
    this.blocks = state.blocks();
    this.mostAhead = 2L * threads + 2;
    this.busy = threads;
  }

  long blocks() {
    return blocks;
  }

  /** The number of the next block to play, or one too large. */
  synchronized long take() {
    while (next < blocks && next - handedOver >= mostAhead && goesOn()) {
      pause();
    }
    return goesOn() ? next++ : blocks;
  }

  private boolean goesOn() {
    return failure == null && !state.stopped();
  }

  synchronized void finished(Finished block) {
    finished.add(block);
    notifyAll();
  }

  /** A result has been handed over to its reader, so that one more block may begin. */
  synchronized void handedOver() {
    handedOver++;
    notifyAll();
  }

  /** The work of one thread is over. */
  synchronized void leave() {
    busy--;
    notifyAll();
  }

  /** A block failed; where several do, the first in their order counts. */
  synchronized void fail(long block, Throwable broken) {
    if (block < failedBlock) {
      failedBlock = block;
      failure = broken;
    }
    notifyAll();
  }

  /** Any block that is done; null when no thread is at work any more. */
  synchronized Finished awaitFinished() {
    while (finished.isEmpty() && busy > 0) {
      pause();
    }
    return finished.poll();
  }

  /**
   * Throws the failure if there was one. The blocks before the one that failed had all been taken
   * before it, so with all threads at rest it is known which failure is the first.
   */
  synchronized void throwFailure() {
    if (failure instanceof Error error) {
      throw error;
    } else if (failure instanceof RuntimeException broken) {
      throw broken;
    } else if (failure != null) {
      throw new IllegalStateException(failure);
    }
  }

  private void pause() {
    try {
      wait(LOOK_MILLIS);
    } catch (InterruptedException interrupted) {
      // The run ends as with any other stop, which says that it was stopped.
      state.stop();
    }
  }
}
