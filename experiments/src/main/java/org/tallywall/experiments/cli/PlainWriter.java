package org.tallywall.experiments.cli;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import org.tallywall.core.text.Shown;

/**
 * Writes UTF-8 with {@code \n} at the end of lines, whatever the machine usually does, and
 * remembers the first error instead of throwing it. Whatever else a terminal would obey becomes
 * visible: names, questions and words typed wrongly come from outside.
 */
final class PlainWriter extends Writer {
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

  /** Writes text of the program's own as it is, control characters and all. */
  void raw(String text) {
    flushReturn();
    put(text);
  }

  @Override
  public void write(char[] letters, int from, int length) {
    String text = new String(letters, from, length);
    if (heldReturn && !text.startsWith("\n")) {
      flushReturn();
    }
    heldReturn = false;
    int start = 0;
    for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', start)) {
      boolean returns = end > start && text.charAt(end - 1) == '\r';
      put(Shown.text(text.substring(start, returns ? end - 1 : end)));
      put("\n");
      start = end + 1;
    }
    heldReturn = text.length() > start && text.endsWith("\r");
    put(Shown.text(text.substring(start, text.length() - (heldReturn ? 1 : 0))));
  }

  private void flushReturn() {
    if (heldReturn) {
      heldReturn = false;
      put(Shown.text("\r"));
    }
  }

  private void put(String text) {
    if (!text.isEmpty() && trouble == null) {
      try {
        out.write(text);
      } catch (IOException e) {
        trouble = e;
      }
    }
  }

  @Override
  public void flush() {
    flushReturn();
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
