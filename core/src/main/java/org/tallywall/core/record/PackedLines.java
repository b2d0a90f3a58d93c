package org.tallywall.core.record;

import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.util.zip.CRC32;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import java.util.zip.ZipException;

/**
 * Unpacks a file that gzip packed as one piece (RFC 1952). The stream of the library passes over
 * what follows the piece; here it is a fault, for records that were put behind others, or garbage,
 * must not be taken for nothing.
 */
final class PackedLines extends InflaterInputStream {
  private static final int BUFFER = 1 << 16;
  private static final int EXTRA = 4;
  private static final int NAME = 8;
  private static final int COMMENT = 16;
  private static final int HEADER_CHECK = 2;
  private static final int KNOWN_FLAGS = 31;

  private final CRC32 check = new CRC32();
  private long size;
  private boolean ended;

  /**
   * Begins to unpack.
   *
   * @param packed the packed bytes
   * @throws IOException if they do not begin as gzip does
   */
  PackedLines(InputStream packed) throws IOException {
    super(packed, new Inflater(true), BUFFER);
    header();
  }

  private void header() throws IOException {
    for (int wanted : new int[] {0x1f, 0x8b, 8}) {
      if (next(in) != wanted) {
        throw new ZipException("not packed with gzip");
      }
    }
    int flags = next(in);
    if (flags > KNOWN_FLAGS) {
      throw new ZipException("not packed with gzip");
    }
    for (int left = 6; left > 0; left--) {
      next(in);
    }
    if ((flags & EXTRA) != 0) {
      for (int left = next(in) + 256 * next(in); left > 0; left--) {
        next(in);
      }
    }
    for (int flag : new int[] {NAME, COMMENT}) {
      while ((flags & flag) != 0 && next(in) != 0) {
        continue;
      }
    }
    for (int left = (flags & HEADER_CHECK) == 0 ? 0 : 2; left > 0; left--) {
      next(in);
    }
  }

  private static int next(InputStream from) throws IOException {
    int next = from.read();
    if (next < 0) {
      throw new EOFException("the packed file breaks off");
    }
    return next;
  }

  @Override
  public int read(byte[] into, int from, int length) throws IOException {
    int count = super.read(into, from, length);
    if (count > 0) {
      check.update(into, from, count);
      size += count;
    } else if (count < 0 && !ended) {
      ended = true;
      trailer();
    }
    return count;
  }

  private void trailer() throws IOException {
    int unread = inf.getRemaining();
    InputStream behind =
        new SequenceInputStream(new ByteArrayInputStream(buf, len - unread, unread), in);
    if (number(behind) != check.getValue() || number(behind) != (size & 0xffffffffL)) {
      throw new ZipException("damaged");
    }
    if (behind.read() >= 0) {
      throw new TrailingException();
    }
  }

  private static long number(InputStream from) throws IOException {
    long number = 0;
    for (int shift = 0; shift < 32; shift += 8) {
      number |= (long) next(from) << shift;
    }
    return number;
  }

  @Override
  public void close() throws IOException {
    super.close();
    inf.end();
  }

  /** Something follows the end of what was packed. */
  static final class TrailingException extends IOException {
    private static final long serialVersionUID = 1L;

    TrailingException() {
      super("something follows the end of the packed records");
    }
  }
}
