package org.tallywall.experiments.run;

import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Plays the blocks of a study with the threads of this machine and hands their results over in the
 * order of blocks, whatever the order in which they end. No more than a few results wait at a time,
 * so a run of any length needs little memory.
 */
public final class LocalRun {
  private static final long LOOK_MILLIS = 100;

  private final Supplier<? extends BlockPlayer> tables;
  private final RunState state;
  private final int threads;
  private final long blocks;
  private final Map<Long, BlockResult> waiting = new TreeMap<>();
  private long next;
  private long merged;
  private long failedBlock = Long.MAX_VALUE;
  private Throwable failure;

  /**
   * A run.
   *
   * @param tables makes what plays the blocks, one for each thread
   * @param state hears of every deal played, and says when to stop
   * @param threads how many threads, 1 or more
   */
  public LocalRun(Supplier<? extends BlockPlayer> tables, RunState state, int threads) {
    this.tables = tables;
    this.state = state;
    this.threads = threads;
    this.blocks = Block.count(state.deals(), state.blockSize());
  }

  /**
   * Plays everything.
   *
   * @param inOrder takes the results in the order of blocks, in this thread
   * @return true when all was played, false where the run was stopped
   * @throws PlayerFaultException if a player breaks down or answers illegally
   */
  public boolean play(Consumer<BlockResult> inOrder) {
    ExecutorService workers = Executors.newFixedThreadPool(threads, LocalRun::daemon);
    for (int worker = 0; worker < threads; worker++) {
      workers.execute(this::work);
    }
    try {
      for (long block = 0; block < blocks; block++) {
        BlockResult result = await(block);
        if (result == null) {
          return false;
        }
        inOrder.accept(result);
        done();
      }
      return true;
    } finally {
      end(workers);
    }
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "player of blocks");
    thread.setDaemon(true);
    return thread;
  }

  private void work() {
    try {
      BlockPlayer table = tables.get();
      for (long block = take(); block < blocks; block = take()) {
        BlockResult result = playOne(table, block);
        if (result == null) {
          return;
        }
        synchronized (this) {
          waiting.put(block, result);
          notifyAll();
        }
      }
    } catch (RuntimeException | Error broken) {
      fail(-1, broken);
    }
  }

  private BlockResult playOne(BlockPlayer table, long block) {
    try {
      return table.play(Block.of(block, state.deals(), state.blockSize()), state);
    } catch (RuntimeException | Error broken) {
      fail(block, broken);
      return null;
    }
  }

  /** The number of the next block to play, or one too large. */
  private synchronized long take() {
    while (next < blocks && next - merged >= 2L * threads + 2 && goesOn()) {
      pause();
    }
    return goesOn() ? next++ : blocks;
  }

  private boolean goesOn() {
    return failure == null && !state.stopped();
  }

  private synchronized void fail(long block, Throwable broken) {
    if (block < failedBlock) {
      failedBlock = block;
      failure = broken;
    }
    notifyAll();
  }

  /** A block's result; null where the run was stopped. */
  private synchronized BlockResult await(long block) {
    while (!waiting.containsKey(block)) {
      // The blocks before the one that failed have all been taken, and the first failure counts.
      if (block >= failedBlock) {
        throwFailure();
      } else if (state.stopped()) {
        return null;
      }
      pause();
    }
    return waiting.remove(block);
  }

  private void throwFailure() {
    if (failure instanceof Error error) {
      throw error;
    }
    throw (RuntimeException) failure;
  }

  private synchronized void done() {
    merged++;
    notifyAll();
  }

  private void pause() {
    try {
      wait(LOOK_MILLIS);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      state.stop();
    }
  }

  private void end(ExecutorService workers) {
    if (merged < blocks) {
      state.stop();
    }
    workers.shutdown();
    try {
      workers.awaitTermination(1, TimeUnit.MINUTES);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
