package org.tallywall.experiments.tally;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Carries numbers out into bytes: seven bits a byte, lowest first, with the sign in the lowest bit,
 * so that a small number takes a byte.
 */
public final class NumberWriter implements Carrier {
  private byte[] bytes = new byte[1 << 12];
  private int length;

  /** Nothing written yet. */
  public NumberWriter() {}

  @Override
  public long carry(long number) {
    long rest = number << 1 ^ number >> 63;
    while ((rest & ~0x7FL) != 0) {
      put((byte) (rest | 0x80));
      rest >>>= 7;
    }
    put((byte) rest);
    return number;
  }

  /**
   * Writes a text.
   *
   * @param text any text
   */
  public void text(String text) {
    byte[] letters = text.getBytes(StandardCharsets.UTF_8);
    carry(letters.length);
    reserve(letters.length);
    System.arraycopy(letters, 0, bytes, length, letters.length);
    length += letters.length;
  }

  private void put(byte value) {
    reserve(1);
    bytes[length++] = value;
  }

  private void reserve(int more) {
    if (length + more > bytes.length) {
      bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, length + more));
    }
  }

  /**
   * What was written.
   *
   * @return a fresh array
   */
  public byte[] bytes() {
    return Arrays.copyOf(bytes, length);
  }
}
