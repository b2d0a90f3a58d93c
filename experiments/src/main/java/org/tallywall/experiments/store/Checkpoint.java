package org.tallywall.experiments.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;
import org.tallywall.experiments.run.Block;

/**
 * The bytes of a block's file. In their order: a mark, the version of this format, the digest of
 * the run to which the block belongs, the block's number, first deal and number of deals, the
 * length of the content, the content packed, and the SHA-256 of all that precedes it (FIPS 180-4).
 * So a file that was cut short, changed, or made by another run is never taken for a result.
 */
public final class Checkpoint {
  /**
   * Version of the format. It is raised with every change of what a block holds or means; {@code
   * block-layouts.txt} among the tests says which layout belongs to which.
   */
  public static final int FORMAT = 3;

  private static final byte[] MARK = "tallyblk".getBytes(StandardCharsets.US_ASCII);
  private static final int DIGEST = 32;

  /** Most bytes of a block, unpacked; a block with all its records has some millions. */
  private static final int MOST_CONTENT = 1 << 30;

  private static final int HEAD = MARK.length + 4 + DIGEST + 8 + 8 + 4 + 4;

  private Checkpoint() {}

  /** What a file turned out to be. */
  public enum State {
    /** The block, whole. */
    GOOD,
    /** There is no such file. */
    MISSING,
    /** The file was cut short or changed. */
    DAMAGED,
    /** The file belongs to another run or another block. */
    FOREIGN,
    /** The file was written by a version of the program that stores other things. */
    OUTDATED
  }

  /**
   * What a file holds.
   *
   * @param state what it turned out to be
   * @param content the content where it is good, else empty
   */
  public record Reading(State state, byte[] content) {
    static Reading of(State state) {
      return new Reading(state, new byte[0]);
    }

    /**
     * Whether the content can be used.
     *
     * @return true where the file is good
     */
    public boolean good() {
      return state == State.GOOD;
    }
  }

  /**
   * The file of a block.
   *
   * @param run the digest of the run, 32 bytes
   * @param block the block
   * @param content what is to be kept
   * @return the bytes of the file
   */
  public static byte[] file(byte[] run, Block block, byte[] content) {
    byte[] packed = pack(content);
    ByteBuffer file = ByteBuffer.allocate(HEAD + packed.length + DIGEST);
    head(file, run, block);
    file.putInt(content.length).put(packed);
    file.put(digest(file.array(), HEAD + packed.length));
    return file.array();
  }

  private static void head(ByteBuffer file, byte[] run, Block block) {
    file.put(MARK).putInt(FORMAT).put(run);
    file.putLong(block.number()).putLong(block.firstDeal()).putInt(block.deals());
  }

  /**
   * Reads a file.
   *
   * @param run the digest of the run, 32 bytes
   * @param block the block that is wanted
   * @param file the bytes of the file
   * @return the content, or what is wrong
   */
  public static Reading read(byte[] run, Block block, byte[] file) {
    State state = state(file);
    if (state != State.GOOD) {
      return Reading.of(state);
    }
    ByteBuffer wanted = ByteBuffer.allocate(HEAD - 4);
    head(wanted, run, block);
    if (!Arrays.equals(file, 0, HEAD - 4, wanted.array(), 0, HEAD - 4)) {
      return Reading.of(State.FOREIGN);
    }
    byte[] content = unpack(file, file.length - DIGEST, ByteBuffer.wrap(file).getInt(HEAD - 4));
    return content == null ? Reading.of(State.DAMAGED) : new Reading(State.GOOD, content);
  }

  /**
   * The run that a file says it belongs to.
   *
   * @param file the bytes of the file
   * @return the digest of the run, 32 bytes; none where the file is not whole or of another format
   */
  static byte[] run(byte[] file) {
    int from = MARK.length + 4;
    return state(file) == State.GOOD ? Arrays.copyOfRange(file, from, from + DIGEST) : new byte[0];
  }

  /** Whether a file is whole and of this format, whatever it belongs to. */
  private static State state(byte[] file) {
    int end = file.length - DIGEST;
    if (end < HEAD || !Arrays.equals(file, 0, MARK.length, MARK, 0, MARK.length)) {
      return State.DAMAGED;
    }
    if (!Arrays.equals(digest(file, end), Arrays.copyOfRange(file, end, file.length))) {
      return State.DAMAGED;
    }
    return ByteBuffer.wrap(file).getInt(MARK.length) == FORMAT ? State.GOOD : State.OUTDATED;
  }

  private static byte[] pack(byte[] content) {
    Deflater deflater = new Deflater(Deflater.BEST_SPEED);
    try {
      deflater.setInput(content);
      deflater.finish();
      byte[] packed = new byte[content.length / 2 + 64];
      int length = 0;
      while (!deflater.finished()) {
        if (length == packed.length) {
          packed = Arrays.copyOf(packed, 2 * length);
        }
        length += deflater.deflate(packed, length, packed.length - length);
      }
      return Arrays.copyOf(packed, length);
    } finally {
      deflater.end();
    }
  }

  /** The content; null where it cannot be unpacked to just its length. */
  private static byte[] unpack(byte[] file, int end, int length) {
    Inflater inflater = new Inflater();
    if (length < 0 || length > MOST_CONTENT) {
      inflater.end();
      return null;
    }
    try {
      byte[] content = new byte[length];
      inflater.setInput(file, HEAD, end - HEAD);
      int found = 0;
      while (!inflater.finished() && !inflater.needsInput() && found < length) {
        found += inflater.inflate(content, found, length - found);
      }
      return found == length ? content : null;
    } catch (DataFormatException broken) {
      return null;
    } finally {
      inflater.end();
    }
  }

  private static byte[] digest(byte[] bytes, int length) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      sha.update(bytes, 0, length);
      return sha.digest();
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
