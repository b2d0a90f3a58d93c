package org.tallywall.experiments.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** What a command that was typed gave back. */
record Typed(int code, String out, String err) {

  /** Runs a command as if it had been typed, with no terminal and lines of 100 letters. */
  static Typed run(String... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code = new Program(Console.withoutProgress(out, err, 100)).run(words);
    return new Typed(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
