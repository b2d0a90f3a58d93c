package org.tallywall.experiments.cli;

import org.tallywall.experiments.error.WrongInputException;

/** How many threads play, as the option {@code --threads} says. */
final class Threads {
  private static final int MOST = 1_000;

  private Threads() {}

  /** The number given, or that of the machine's processors where none was. */
  static int of(Integer given) {
    int threads = given == null ? Runtime.getRuntime().availableProcessors() : given;
    if (threads < 1 || threads > MOST) {
      throw new WrongInputException("--threads is 1 to " + MOST + ", not " + threads);
    }
    return threads;
  }
}
