package org.tallywall.core.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Locale;

/** Reads whole text files in UTF-8 and says in plain words why one cannot be read. */
public final class TextFile {
  private static final String PLAIN = "save it as plain text (UTF-8)";

  private TextFile() {}

  /**
   * The text of a file, without a byte order mark.
   *
   * @param file the file
   * @return its text
   * @throws FaultyFileException if it is missing, no regular file, unreadable, larger than {@link
   *     FileLimits#LARGEST_FILE} or not UTF-8
   */
  public static String read(Path file) {
    return read(file, PLAIN);
  }

  /**
   * The text of a file, without a byte order mark.
   *
   * @param file the file
   * @param remedy what to do with a file that another program keeps in its own format, as in "save
   *     it as CSV (UTF-8)"
   * @return its text
   * @throws FaultyFileException if it is missing, no regular file, unreadable, larger than {@link
   *     FileLimits#LARGEST_FILE}, the file of a spreadsheet or the like, or not UTF-8
   */
  public static String read(Path file, String remedy) {
    byte[] bytes = bytes(file, FileLimits.LARGEST_FILE);
    String other = OtherFormat.of(file.toString(), bytes);
    if (other != null) {
      throw unusable(file, "this is " + other + ", not plain text; " + remedy);
    }
    return text(file.toString(), bytes);
  }

  /**
   * The text that comes in from elsewhere, such as standard input, without a byte order mark. It is
   * read to its end and not closed.
   *
   * @param name what messages call it
   * @param in where it comes from
   * @return the text
   * @throws FaultyFileException if it cannot be read to its end, is larger than {@link
   *     FileLimits#LARGEST_FILE} or not UTF-8
   */
  public static String read(String name, InputStream in) {
    try {
      byte[] bytes = in.readNBytes(FileLimits.LARGEST_FILE);
      if (bytes.length == FileLimits.LARGEST_FILE && in.read() >= 0) {
        throw new FaultyFileException(name, tooLarge("this", FileLimits.LARGEST_FILE));
      }
      return text(name, bytes);
    } catch (IOException unreadable) {
      throw new FaultyFileException(name, "it cannot be read to its end; try once more");
    }
  }

  private static String text(String name, byte[] bytes) {
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException binary) {
      boolean table = name.toLowerCase(Locale.ROOT).endsWith(".csv");
      throw new FaultyFileException(
          name, "this is not a text in UTF-8; save it as " + (table ? "CSV (UTF-8)" : "UTF-8"));
    }
  }

  /**
   * The bytes of a file.
   *
   * @param file the file
   * @param most how many it may have
   * @return all of them
   * @throws FaultyFileException if it is missing, no regular file, unreadable or larger
   */
  public static byte[] bytes(Path file, int most) {
    try {
      if (regular(file).size() <= most) {
        try (InputStream in = Files.newInputStream(file)) {
          byte[] bytes = in.readNBytes(most);
          if (in.read() < 0) {
            return bytes;
          }
        }
      }
      throw unusable(file, tooLarge("the file", most));
    } catch (NoSuchFileException missing) {
      throw unusable(file, "there is no such file; check its name and folder");
    } catch (IOException unreadable) {
      throw unusable(file, "the file cannot be read; check its permissions");
    }
  }

  /**
   * Makes sure that a file can be read to its end: a device may have none, a pipe may wait for
   * ever. Nothing is opened.
   *
   * @param file the file
   * @throws FaultyFileException if it is a folder, a device or a pipe
   * @throws IOException if it is missing or may not be looked at
   */
  public static void requireRegular(Path file) throws IOException {
    regular(file);
  }

  private static BasicFileAttributes regular(Path file) throws IOException {
    BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
    if (found.isDirectory()) {
      throw unusable(file, "this is a folder; name a file in it");
    } else if (!found.isRegularFile()) {
      throw unusable(file, "this is a device or a pipe; name a file on a disk");
    }
    return found;
  }

  private static String tooLarge(String what, int most) {
    return what + " is larger than this program reads (" + size(most) + "); is it the right one?";
  }

  private static String size(int bytes) {
    return bytes >= 1 << 20 ? (bytes >> 20) + " MiB" : bytes + " bytes";
  }

  private static FaultyFileException unusable(Path file, String why) {
    return new FaultyFileException(file.toString(), why);
  }
}
