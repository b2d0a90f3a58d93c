package org.tallywall.experiments.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.tallywall.experiments.run.ExitCall;

/**
 * Notices when something ends the process before the program has come to its end: code of a user's
 * jar can do that. The process then fails, whatever exit code that code had in mind.
 */
final class EarlyEnd {
  private static final long PATIENCE_MINUTES = 5;
  private static final long LEAVING_SECONDS = 30;

  private final Interrupts interrupts;
  private final Console console;
  private final CountDownLatch done = new CountDownLatch(1);
  private volatile int code = Program.FAILED;

  private EarlyEnd(Interrupts interrupts, Console console) {
    this.interrupts = interrupts;
    this.console = console;
  }

  /** Begins to watch. */
  static EarlyEnd watch(Interrupts interrupts, Console console) {
    EarlyEnd end = new EarlyEnd(interrupts, console);
    Runtime.getRuntime().addShutdownHook(new Thread(end::look, "end"));
    return end;
  }

  /** The program has come to its end, with an exit code. */
  void done(int exitCode) {
    code = exitCode;
    done.countDown();
    Thread last = new Thread(this::leave, "end at last");
    last.setDaemon(true);
    last.start();
  }

  /** What others have the machine do at the end may take for ever. */
  private void leave() {
    try {
      TimeUnit.SECONDS.sleep(LEAVING_SECONDS);
    } catch (InterruptedException interrupted) {
      // Nobody interrupts it; if code of a jar does, the end comes at once.
    }
    Runtime.getRuntime().halt(code);
  }

  private void look() {
    if (done.getCount() == 0 || !exitWasCalled()) {
      return;
    }
    if (!interrupts.tellsOfExit() || !ended()) {
      console.complain(
          "tallywall: a player's code ended the program before it was done; take that out of the player");
      console.err().flush();
    }
    Runtime.getRuntime().halt(code);
  }

  private boolean ended() {
    try {
      return done.await(PATIENCE_MINUTES, TimeUnit.MINUTES);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private static boolean exitWasCalled() {
    return Thread.getAllStackTraces().values().stream().anyMatch(ExitCall::isIn);
  }
}
