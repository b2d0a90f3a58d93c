package org.tallywall.experiments.run;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/** Waits for players that are asked outside a run, but for no answer longer than is allowed. */
public final class Patient {
  private static final long LOOK_MILLIS = 250;

  private Patient() {}

  /**
   * Has something done in which players are asked.
   *
   * @param <T> what comes out
   * @param pulse shows whether the players still answer; they are asked through it
   * @param limits how long an answer may take
   * @param work asks them, in a thread of its own
   * @return what came out
   * @throws SlowPlayerException if an answer takes too long; nobody waits for the thread any more
   * @throws GreedyPlayerException if the memory is used up while a player is asked
   */
  public static <T> T wait(Pulse pulse, RunLimits limits, Supplier<T> work) {
    FutureTask<T> task = new FutureTask<>(work::get);
    Thread thread = new Thread(task, "players at one table");
    thread.setDaemon(true);
    thread.start();
    long pause = Math.max(1, Math.min(LOOK_MILLIS, limits.decisionMillis() / 4));
    SlowWatch watch = new SlowWatch(pulse, limits.decisionMillis(), 2 * pause);
    long before = limits.clock().getAsLong();
    while (true) {
      try {
        return task.get(pause, TimeUnit.MILLISECONDS);
      } catch (TimeoutException notYet) {
        long now = limits.clock().getAsLong();
        SlowPlayerException slow = watch.look(TimeUnit.NANOSECONDS.toMillis(now - before));
        before = now;
        if (slow != null) {
          throw slow;
        }
      } catch (ExecutionException thrown) {
        if (thrown.getCause() instanceof OutOfMemoryError full) {
          throw new GreedyPlayerException(pulse.game(), pulse.seat(), full);
        }
        throw Patient.<RuntimeException>asItIs(thrown.getCause());
      } catch (InterruptedException interrupted) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException("interrupted while players were asked", interrupted);
      }
    }
  }

  /** Throws what was thrown, checked or not: code of a user's own may throw anything anywhere. */
  @SuppressWarnings("unchecked")
  private static <T extends Throwable> T asItIs(Throwable thrown) throws T {
    throw (T) thrown;
  }
}
