package org.tallywall.experiments.cli;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** What a command that was typed gave back. */
record Typed(int code, String out, String err) {

  /** Runs a command as if it had been typed, with no terminal and lines of 100 letters. */
  static Typed run(String... words) {
    return as(CalledAs.NAME, words);
  }

  /** Runs a command of a program that was called in some way. */
  static Typed as(String called, String... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        new Program(
                Console.withoutProgress(
                    InputStream.nullInputStream(), out, err, 100, CalledAs.of(called)))
            .run(words);
    return new Typed(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
