package org.tallywall.experiments.run;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * Looks a few times a second whether the players at all tables still answer. Nobody waits any more
 * for a table whose player does not: its block fails.
 */
final class Watchdog implements AutoCloseable {
  private static final long LOOK_MILLIS = 250;

  private final Map<Worker, SlowWatch> watches = new LinkedHashMap<>();
  private final BlockQueue queue;
  private final RunState state;
  private final LongSupplier clock;
  private final long pauseMillis;
  private final ScheduledExecutorService timer =
      Executors.newSingleThreadScheduledExecutor(Watchdog::daemon);
  private long lastLook;

  Watchdog(List<Worker> workers, BlockQueue queue, RunState state, RunLimits limits) {
    this.state = state;
    long limitMillis = limits.decisionMillis();
    this.clock = limits.clock();
    this.queue = queue;
    this.pauseMillis = Math.max(1, Math.min(LOOK_MILLIS, limitMillis / 4));
    for (Worker worker : workers) {
      watches.put(worker, new SlowWatch(worker.pulse(), limitMillis, 2 * pauseMillis));
    }
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "watchdog");
    thread.setDaemon(true);
    return thread;
  }

  void start() {
    lastLook = clock.getAsLong();
    timer.scheduleWithFixedDelay(this::look, pauseMillis, pauseMillis, TimeUnit.MILLISECONDS);
  }

  private void look() {
    long now = clock.getAsLong();
    long millis = TimeUnit.NANOSECONDS.toMillis(now - lastLook);
    lastLook = now;
    for (Map.Entry<Worker, SlowWatch> watch : watches.entrySet()) {
      Worker worker = watch.getKey();
      SlowPlayerException slow = worker.left() ? null : watch.getValue().look(millis);
      if (slow != null) {
        leave(worker, slow);
      } else if (state.exitCalled() && !worker.left() && worker.exits()) {
        Pulse pulse = worker.pulse();
        leave(worker, new ExitingPlayerException(pulse.game(), pulse.seat()));
      }
    }
  }

  private void leave(Worker worker, RuntimeException why) {
    queue.fail(worker.block(), why);
    worker.leave();
  }

  @Override
  public void close() {
    timer.shutdownNow();
  }
}
