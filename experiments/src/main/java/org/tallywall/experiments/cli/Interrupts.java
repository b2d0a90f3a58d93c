package org.tallywall.experiments.cli;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

/**
 * What happens when the user wants the program to stop. Work that can be stopped in good order says
 * here how; whatever else goes on ends at once.
 */
final class Interrupts {
  /** The third time nothing is waited for any more. */
  private static final int AT_ONCE = 3;

  private static final Work NONE = times -> {};

  private final Runnable leave;
  private final AtomicReference<Work> work = new AtomicReference<>(NONE);
  private final AtomicInteger heard = new AtomicInteger();

  /** Work that can be stopped. Its methods are called from other threads. */
  @FunctionalInterface
  interface Work {
    /**
     * The user wants it to stop.
     *
     * @param times how often the user has said so, from 1
     */
    void stop(int times);

    /** Something in this process has told the whole program to end, and it was not the user. */
    default void exitIsCalled() {}
  }

  /**
   * Nothing goes on yet.
   *
   * @param leave ends the process at once
   */
  Interrupts(Runnable leave) {
    this.leave = leave;
  }

  /** Work begins. */
  void begins(Work next) {
    heard.set(0);
    work.set(next);
  }

  /** It is over. */
  void over() {
    work.set(NONE);
  }

  /** The user wants the program to stop. */
  void stop() {
    Work now = work.get();
    int times = heard.incrementAndGet();
    if (now == NONE || times >= AT_ONCE) {
      leave.run();
    } else {
      now.stop(times);
    }
  }

  /** Whether there is work that hears of a program that ends. */
  boolean tellsOfExit() {
    Work now = work.get();
    now.exitIsCalled();
    return now != NONE;
  }
}
