package org.tallywall.experiments.cli;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.words.Words;

/**
 * Says how far a run is: on a terminal a bar that is written over, elsewhere one plain line every
 * ten seconds.
 */
final class ProgressPrinter {
  private static final long BAR_MILLIS = 500;
  private static final long LINE_MILLIS = 10_000;
  private static final int BAR_LETTERS = 24;

  private final Console console;
  private final RunState state;
  private final boolean mayStop;
  private final long start = System.nanoTime();
  private final ScheduledExecutorService timer =
      Executors.newSingleThreadScheduledExecutor(ProgressPrinter::daemon);
  private int written;

  /**
   * Says how far a run is.
   *
   * @param console where to
   * @param state the run
   * @param mayStop whether it may stop early, so that nobody knows how long it takes
   */
  ProgressPrinter(Console console, RunState state, boolean mayStop) {
    this.mayStop = mayStop;
    this.console = console;
    this.state = state;
    long pause = console.terminal() ? BAR_MILLIS : LINE_MILLIS;
    if (console.progress()) {
      timer.scheduleAtFixedRate(this::print, pause, pause, TimeUnit.MILLISECONDS);
    }
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "progress");
    thread.setDaemon(true);
    return thread;
  }

  private synchronized void print() {
    long done = state.done();
    String text = text(done, state.played(), state.deals(), System.nanoTime() - start, mayStop);
    if (console.terminal()) {
      String line = bar(done, state.deals()) + "  " + text;
      overwrite(line.substring(0, Math.min(line.length(), console.width() - 1)));
    } else {
      console.complain(text);
    }
  }

  private void overwrite(String line) {
    String blank = " ".repeat(Math.max(0, written - line.length()));
    console.overwrite(line + blank);
    written = line.length();
  }

  static String bar(long played, long deals) {
    int full = (int) (BAR_LETTERS * played / deals);
    return "[" + "#".repeat(full) + ".".repeat(BAR_LETTERS - full) + "]";
  }

  /** How far, how fast, how long still; the speed is that of what was played now. */
  static String text(long done, long played, long deals, long nanos, boolean mayStop) {
    double seconds = nanos / 1e9;
    String far =
        Words.grouped(done)
            + " of "
            + Words.grouped(deals)
            + " deals, "
            + 100 * done / deals
            + " %";
    if (played == 0 || seconds <= 0) {
      return far;
    }
    double speed = played / seconds;
    return far
        + ", "
        + speed(speed, "deal", "deals")
        + ", "
        + left(Math.round((deals - done) / speed), mayStop);
  }

  /** A run that may stop early takes no longer than this, and whole minutes are exact enough. */
  private static String left(long seconds, boolean mayStop) {
    if (!mayStop) {
      return duration(seconds) + " left";
    }
    long minutes = (seconds + 59) / 60;
    String most = minutes < 60 ? minutes + " min" : duration(60 * minutes);
    return "at most " + (seconds < 60 ? duration(seconds) : most) + " left";
  }

  /** How many in a second, or in a minute where that says more. */
  static String speed(double aSecond, String one, String several) {
    return aSecond < 1
        ? Words.count(Math.round(60 * aSecond), one, several) + " a minute"
        : Words.count(Math.round(aSecond), one, several) + " a second";
  }

  static String duration(long seconds) {
    if (seconds < 60) {
      return seconds + " s";
    } else if (seconds < 3600) {
      return seconds / 60 + " min " + seconds % 60 + " s";
    }
    return seconds / 3600 + " h " + seconds % 3600 / 60 + " min";
  }

  /** Says something in between. */
  synchronized void say(String line) {
    clear();
    console.complain(line);
  }

  /** Says nothing more and clears the bar. */
  void end() {
    timer.shutdownNow();
    try {
      timer.awaitTermination(1, TimeUnit.SECONDS);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
    clear();
  }

  private synchronized void clear() {
    if (written > 0) {
      overwrite("");
      console.overwrite("");
    }
  }
}
