package org.tallywall.experiments.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.tallywall.experiments.run.RunState;

/**
 * While this is open, Ctrl-C asks the run to stop, and the process does not end before the run has
 * cleaned up behind itself.
 */
final class Interruption {
  private static final long PATIENCE_SECONDS = 60;

  private final CountDownLatch cleanedUp = new CountDownLatch(1);
  private final Thread hook;

  Interruption(RunState state) {
    this.hook = new Thread(() -> stop(state), "stop");
    Runtime.getRuntime().addShutdownHook(hook);
  }

  private void stop(RunState state) {
    state.stop();
    try {
      cleanedUp.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  /** The run has cleaned up. */
  void end() {
    cleanedUp.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException alreadyEnding) {
      // Ctrl-C was pressed: the process ends by itself.
    }
  }
}
