package org.tallywall.experiments.cli;

import java.io.IOException;
import java.io.OutputStream;

/**
 * Types commands for tests of other packages, one after another. The commands are set up once,
 * which takes longer than most of them.
 */
public final class Keyboard {
  private static final int WIDTH = 100;

  private final Screen out = new Screen();
  private final Screen err = new Screen();
  private final Program program = new Program(Console.withoutProgress(out, err, WIDTH));

  /** Runs a command in this process, with no terminal and no progress; returns its exit code. */
  public int type(OutputStream toOut, OutputStream toErr, String... words) {
    out.to = toOut;
    err.to = toErr;
    return program.run(words);
  }

  /** Hands on to whoever looks at the time. */
  private static final class Screen extends OutputStream {
    private OutputStream to;

    @Override
    public void write(int one) throws IOException {
      to.write(one);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      to.write(bytes, from, length);
    }
  }
}
