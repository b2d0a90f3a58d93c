package org.tallywall.experiments.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Plays the blocks of a study with the threads of this machine. A result is kept as soon as its
 * block is played, whatever the order in which blocks end, and handed over in the order of blocks.
 * No more than a few results wait at a time, so a run of any length needs little memory.
 */
public final class LocalRun {
  private final BlockQueue queue;
  private final RunState state;
  private final RunLimits limits;
  private final BlockKeeper keeper;
  private final List<Worker> workers = new ArrayList<>();
  private final Map<Long, BlockResult> waiting = new TreeMap<>();
  private long next;
  private boolean keeperBroke;

  /**
   * A run.
   *
   * @param tables makes what plays the blocks, one for each thread
   * @param state hears of every deal played, and says when to stop
   * @param limits how many threads, and how long a decision may take
   * @param keeper keeps the results of blocks, and knows those of an earlier run
   */
  public LocalRun(TableMaker tables, RunState state, RunLimits limits, BlockKeeper keeper) {
    this.queue = new BlockQueue(state, limits.threads());
    this.state = state;
    this.limits = limits;
    this.keeper = keeper;
    for (int worker = 0; worker < limits.threads(); worker++) {
      workers.add(new Worker(tables, queue, state, keeper));
    }
  }

  /**
   * Plays until all is played, the reader wants no more, or the run is to stop; blocks that are
   * being played then are played to their end and kept.
   *
   * @param reader takes the results in the order of blocks, in this thread
   * @return how it ended
   * @throws PlayerFaultException if a player breaks down or answers illegally more often than borne
   * @throws RunEndingPlayerException if a player takes too long, all memory, or ends the program
   * @throws org.tallywall.experiments.error.FailedException if a result cannot be kept
   */
  public Ending play(BlockReader reader) {
    try (Watchdog watchdog = new Watchdog(workers, queue, state, limits)) {
      workers.forEach(Worker::start);
      watchdog.start();
      return read(reader);
    } finally {
      workers.forEach(Worker::leave);
    }
  }

  private Ending read(BlockReader reader) {
    Ending ending = null;
    try {
      while (ending == null) {
        Finished finished = queue.awaitFinished();
        if (finished == null) {
          queue.throwFailure();
          ending = Ending.STOPPED;
        } else {
          keep(finished);
          ending = handOver(reader);
        }
      }
      return ending;
    } finally {
      end(ending);
    }
  }

  /** Hands over what has its turn; null while more is to come. */
  private Ending handOver(BlockReader reader) {
    while (waiting.containsKey(next)) {
      BlockResult result = waiting.remove(next++);
      boolean more = reader.read(result);
      queue.handedOver();
      if (!more) {
        return Ending.ENOUGH;
      }
    }
    return next == queue.blocks() ? Ending.ALL : null;
  }

  private void keep(Finished finished) {
    waiting.put(finished.result().block().number(), finished.result());
    if (!finished.kept()) {
      keeperBroke = true;
      keeper.keep(finished.result());
      keeperBroke = false;
    }
  }

  /** Whatever ended the run: nothing that is still played to its end gets lost. */
  private void end(Ending ending) {
    boolean needless = ending == Ending.ALL || ending == Ending.ENOUGH;
    if (keeperBroke || needless) {
      state.abandon();
    } else {
      state.stop();
    }
    Finished finished = queue.awaitFinished();
    while (finished != null) {
      if (!keeperBroke && !needless) {
        keep(finished);
      }
      finished = queue.awaitFinished();
    }
  }
}
