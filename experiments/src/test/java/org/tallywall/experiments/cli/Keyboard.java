package org.tallywall.experiments.cli;

import java.io.OutputStream;

/** Types commands for tests of other packages. */
public final class Keyboard {
  private static final int WIDTH = 100;

  private Keyboard() {}

  /** Runs a command in this process, with no terminal and no progress; returns its exit code. */
  public static int type(OutputStream out, OutputStream err, String... words) {
    return new Program(Console.withoutProgress(out, err, WIDTH)).run(words);
  }
}
