package org.tallywall.experiments.cli;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

/**
 * Writes UTF-8 with {@code \n} at the end of lines, whatever the machine usually does, and
 * remembers the first error instead of throwing it.
 */
final class PlainWriter extends Writer {
  private static final char[] RETURN = {'\r'};

  private final Writer out;
  private IOException trouble;
  private boolean heldReturn;

  PlainWriter(OutputStream stream) {
    this.out = new BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
  }

  /** The first error met in writing, or null. */
  IOException trouble() {
    return trouble;
  }

  @Override
  public void write(char[] letters, int from, int length) {
    int start = from;
    for (int at = from; at < from + length; at++) {
      if (heldReturn) {
        heldReturn = false;
        if (letters[at] != '\n') {
          part(RETURN, 0, 1);
        }
      }
      if (letters[at] == '\r') {
        part(letters, start, at - start);
        start = at + 1;
        heldReturn = true;
      }
    }
    part(letters, start, from + length - start);
  }

  private void part(char[] letters, int from, int length) {
    if (length > 0 && trouble == null) {
      try {
        out.write(letters, from, length);
      } catch (IOException e) {
        trouble = e;
      }
    }
  }

  @Override
  public void flush() {
    if (heldReturn) {
      heldReturn = false;
      part(RETURN, 0, 1);
    }
    if (trouble == null) {
      try {
        out.flush();
      } catch (IOException e) {
        trouble = e;
      }
    }
  }

  @Override
  public void close() {
    flush();
  }
}
