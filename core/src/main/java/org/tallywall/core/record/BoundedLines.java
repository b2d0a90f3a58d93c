package org.tallywall.core.record;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import org.tallywall.core.text.FileLimits;

/**
 * Reads lines that are no longer than {@link FileLimits#LONGEST_LINE}, empty ones before them
 * counted in: a small packed file may unfold to more than any memory holds.
 */
final class BoundedLines implements Closeable {
  private final BufferedReader in;
  private final StringBuilder line = new StringBuilder();
  private long number;
  private boolean afterReturn;

  /**
   * The lines of a text.
   *
   * @param in where it is read from
   */
  BoundedLines(Reader in) {
    this.in = new BufferedReader(in, 1 << 16);
  }

  /**
   * The next line that is not blank.
   *
   * @return the line without its end, or null behind the last
   * @throws IOException if it cannot be read
   * @throws TooLongException if it is too long
   */
  String next() throws IOException {
    int read = 0;
    line.setLength(0);
    number++;
    for (int letter = in.read(); letter >= 0; letter = in.read()) {
      boolean end = letter == '\n' || letter == '\r';
      boolean second = letter == '\n' && afterReturn;
      afterReturn = letter == '\r';
      if (++read > FileLimits.LONGEST_LINE) {
        throw new TooLongException();
      }
      if (!end) {
        line.append((char) letter);
      } else if (!second && !blank()) {
        return line.toString();
      } else if (!second) {
        line.setLength(0);
        number++;
      }
    }
    return blank() ? null : line.toString();
  }

  private boolean blank() {
    return line.length() == 0 || line.toString().isBlank();
  }

  /** The number of the line read last, from 1. */
  long number() {
    return number;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }

  /** A line is longer than any record. */
  static final class TooLongException extends IOException {
    private static final long serialVersionUID = 1L;

    TooLongException() {
      super("a line is too long");
    }
  }
}
