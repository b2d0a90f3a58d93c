package org.tallywall.experiments.review;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.tallywall.experiments.run.Patient;
import org.tallywall.experiments.run.RunLimits;

/** Plays rounds with several threads, and waits for no player longer than is allowed. */
final class RoundPlayer implements AutoCloseable {
  private final RunLimits limits;
  private final List<WorldPlayer> tables = new ArrayList<>();
  private final ExecutorService threads;

  RoundPlayer(ReviewQuestion question, RunLimits limits) {
    this.limits = limits;
    for (int thread = 0; thread < limits.threads(); thread++) {
      tables.add(new WorldPlayer(question));
    }
    threads = Executors.newFixedThreadPool(tables.size(), RoundPlayer::daemon);
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "review");
    thread.setDaemon(true);
    return thread;
  }

  /** Plays all worlds of a round after each of the choices. */
  void play(Round round, List<Integer> choices) {
    AtomicInteger next = new AtomicInteger(round.first());
    List<Future<?>> all = new ArrayList<>();
    for (WorldPlayer table : tables) {
      all.add(
          threads.submit(
              () ->
                  Patient.wait(
                      table.pulse(), limits, () -> playSome(table, next, round, choices))));
    }
    all.forEach(RoundPlayer::await);
  }

  /** Takes one world after the other until none is left. */
  private static Void playSome(
      WorldPlayer table, AtomicInteger next, Round round, List<Integer> choices) {
    int world = next.getAndIncrement();
    while (world < round.first() + round.worlds()) {
      table.play(world, choices, round);
      world = next.getAndIncrement();
    }
    return null;
  }

  private static void await(Future<?> one) {
    try {
      one.get();
    } catch (ExecutionException thrown) {
      throw RoundPlayer.<RuntimeException>asItIs(thrown.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while games were played", interrupted);
    }
  }

  /** Throws what was thrown, checked or not: code of a user's own may throw anything. */
  @SuppressWarnings("unchecked")
  private static <T extends Throwable> T asItIs(Throwable thrown) throws T {
    throw (T) thrown;
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
