package org.tallywall.strategies.jar;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import org.tallywall.strategies.catalog.WrongPlayerException;

/**
 * Has code of a user's jar do something that a program of ours must not wait for without end: lay
 * out a class, list players, make one. Whatever that code throws comes out as it is.
 */
final class TimeLimit {
  /** Seconds that one piece of work may take; making a player takes far below one. */
  static final int SECONDS = 10;

  private TimeLimit() {}

  /**
   * Has something done.
   *
   * @param <T> what comes out
   * @param what what is being done, for the message
   * @param work does it, in a thread of its own
   * @return what came out
   * @throws WrongPlayerException if it takes too long
   * @throws Throwable whatever the work throws
   */
  static <T> T wait(String what, Supplier<T> work) throws Throwable {
    FutureTask<T> task = new FutureTask<>(work::get);
    Thread thread = new Thread(task, "code from a jar");
    thread.setDaemon(true);
    thread.start();
    try {
      return task.get(SECONDS, TimeUnit.SECONDS);
    } catch (ExecutionException thrown) {
      throw thrown.getCause();
    } catch (TimeoutException endless) {
      throw new WrongPlayerException(
          what + " took longer than " + SECONDS + " seconds; does it wait or loop without end?",
          endless);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new WrongPlayerException(what + " was interrupted", interrupted);
    }
  }
}
