package org.tallywall.experiments.tally;

import java.io.EOFException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Carries in what a {@link NumberWriter} carried out. */
public final class NumberReader implements Carrier {
  private static final int MOST_BITS = 64;

  private final byte[] bytes;
  private int at;

  /**
   * Reads from the beginning.
   *
   * @param bytes what was written; not copied
   */
  public NumberReader(byte[] bytes) {
    this.bytes = bytes;
  }

  /**
   * Reads a number.
   *
   * @param number of no importance
   * @return the number that was written
   * @throws UncheckedIOException if there is none
   */
  @Override
  public long carry(long number) {
    long read = 0;
    for (int shift = 0; shift < MOST_BITS; shift += 7) {
      byte next = next();
      read |= (long) (next & 0x7F) << shift;
      if (next >= 0) {
        return read >>> 1 ^ -(read & 1);
      }
    }
    throw broken();
  }

  @Override
  public int carryLength(int length) {
    return count();
  }

  /**
   * Reads a text.
   *
   * @return the text that was written
   * @throws UncheckedIOException if there is none
   */
  public String text() {
    long length = carry(0);
    if (length < 0 || length > bytes.length - at) {
      throw broken();
    }
    String text = new String(bytes, at, (int) length, StandardCharsets.UTF_8);
    at += (int) length;
    return text;
  }

  /**
   * Reads the length of a list.
   *
   * @return 0 or more, and no more than there are bytes left
   * @throws UncheckedIOException if there is none
   */
  public int count() {
    long count = carry(0);
    if (count < 0 || count > bytes.length - at) {
      throw broken();
    }
    return (int) count;
  }

  /**
   * Ends the reading.
   *
   * @throws UncheckedIOException if there is more
   */
  public void end() {
    if (at != bytes.length) {
      throw broken();
    }
  }

  private byte next() {
    if (at == bytes.length) {
      throw broken();
    }
    return bytes[at++];
  }

  private static UncheckedIOException broken() {
    return new UncheckedIOException(new EOFException("these are not the numbers of a tally"));
  }
}
