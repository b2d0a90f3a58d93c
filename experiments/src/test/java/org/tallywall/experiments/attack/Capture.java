package org.tallywall.experiments.attack;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/** Takes what a command prints: the first megabyte as it is, of the rest how much it was. */
final class Capture extends OutputStream {
  static final int KEPT = 1 << 20;

  private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
  private final CRC32 sum = new CRC32();
  private long bytes;
  private long lines;

  @Override
  public void write(int one) {
    write(new byte[] {(byte) one}, 0, 1);
  }

  @Override
  public void write(byte[] from, int start, int length) {
    bytes += length;
    sum.update(from, start, length);
    for (int at = start; at < start + length; at++) {
      lines += from[at] == '\n' ? 1 : 0;
    }
    kept.write(from, start, Math.min(length, KEPT - kept.size()));
  }

  String text() {
    return kept.toString(StandardCharsets.UTF_8);
  }

  long bytes() {
    return bytes;
  }

  long lines() {
    return lines;
  }

  long sum() {
    return sum.getValue();
  }
}
