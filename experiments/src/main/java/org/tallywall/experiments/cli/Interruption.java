package org.tallywall.experiments.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.tallywall.experiments.run.RunState;

/**
 * While this is open, Ctrl-C asks the run to stop, and the process does not end before the run has
 * finished and stored the blocks that it was playing.
 */
final class Interruption {
  private static final long PATIENCE_MINUTES = 30;

  private final CountDownLatch cleanedUp = new CountDownLatch(1);
  private final Thread hook;

  /**
   * Begins to listen.
   *
   * @param state the run
   * @param heard is told when the user wants to stop
   */
  Interruption(RunState state, Runnable heard) {
    this.hook = new Thread(() -> stop(state, heard), "stop");
    Runtime.getRuntime().addShutdownHook(hook);
  }

  private void stop(RunState state, Runnable heard) {
    if (cleanedUp.getCount() == 0) {
      return;
    }
    state.stop();
    heard.run();
    try {
      cleanedUp.await(PATIENCE_MINUTES, TimeUnit.MINUTES);
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
