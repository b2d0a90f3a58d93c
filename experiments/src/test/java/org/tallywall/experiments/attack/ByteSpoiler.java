package org.tallywall.experiments.attack;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/** Spoils files by their bytes, as bad disks and broken copies do. */
final class ByteSpoiler {

  private ByteSpoiler() {}

  static byte[] spoil(byte[] seed, Chance chance) {
    byte[] bytes = seed.clone();
    for (int times = 1 + chance.below(3) * chance.below(2); times > 0; times--) {
      bytes = once(bytes, chance);
    }
    return bytes;
  }

  private static byte[] once(byte[] bytes, Chance chance) {
    if (bytes.length == 0) {
      return chance.bytes(1 + chance.below(20));
    }
    int at = chance.below(bytes.length);
    int end = Math.min(bytes.length, at + 1 + chance.below(16));
    return switch (chance.below(7)) {
      case 0 -> flipped(bytes, at, chance.below(8));
      case 1 -> with(bytes, at, (byte) chance.below(256));
      case 2 -> Arrays.copyOf(bytes, at);
      case 3 -> joined(Arrays.copyOf(bytes, at), Arrays.copyOfRange(bytes, end, bytes.length));
      case 4 -> inserted(bytes, at, chance.bytes(1 + chance.below(8)));
      case 5 -> inserted(bytes, at, Arrays.copyOfRange(bytes, at, end));
      default -> joined(bytes, chance.bytes(1 + chance.below(40)));
    };
  }

  private static byte[] flipped(byte[] bytes, int at, int bit) {
    return with(bytes, at, (byte) (bytes[at] ^ 1 << bit));
  }

  private static byte[] with(byte[] bytes, int at, byte value) {
    byte[] changed = bytes.clone();
    changed[at] = value;
    return changed;
  }

  private static byte[] inserted(byte[] bytes, int at, byte[] more) {
    byte[] head = joined(Arrays.copyOf(bytes, at), more);
    return joined(head, Arrays.copyOfRange(bytes, at, bytes.length));
  }

  private static byte[] joined(byte[] first, byte[] second) {
    byte[] both = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, both, first.length, second.length);
    return both;
  }

  static byte[] packed(byte[] plain) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
      out.write(plain);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return packed.toByteArray();
  }

  static byte[] unpacked(byte[] packed) {
    try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
