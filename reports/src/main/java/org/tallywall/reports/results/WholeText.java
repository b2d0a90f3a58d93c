package org.tallywall.reports.results;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.tallywall.reports.table.Visible;

/** The text of a file of results, or what is wrong with it. */
final class WholeText {
  private static final int LARGEST = 32 << 20;

  private WholeText() {}

  /**
   * Reads a file in UTF-8.
   *
   * @param file the file
   * @return its text, without a byte order mark
   * @throws WrongResultsException if it is missing, no plain file, unreadable, too large or not
   *     UTF-8
   */
  static String read(Path file) {
    try {
      if (Files.isDirectory(file)) {
        throw wrong(file, "this is a folder, where a file is expected");
      }
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        throw wrong(file, "this is a pipe or a device, where a file is expected");
      }
      String text = StandardCharsets.UTF_8.newDecoder().decode(bytes(file)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (NoSuchFileException missing) {
      throw wrong(
          file,
          Files.exists(file, LinkOption.NOFOLLOW_LINKS)
              ? "this link leads to no file"
              : "there is no such file");
    } catch (CharacterCodingException binary) {
      throw wrong(file, "this is not a text in UTF-8; was the file changed?");
    } catch (AccessDeniedException locked) {
      throw wrong(file, "the file cannot be read; check its permissions");
    } catch (IOException unreadable) {
      throw wrong(file, "the file cannot be read; check its permissions and where links lead");
    }
  }

  /** No more than the bound is read, whatever size the file says that it has. */
  private static ByteBuffer bytes(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST + 1);
      if (bytes.length > LARGEST) {
        throw wrong(file, "the file is larger than this program reads (32 MiB)");
      }
      return ByteBuffer.wrap(bytes);
    }
  }

  private static WrongResultsException wrong(Path file, String why) {
    return new WrongResultsException("\"" + Visible.line(file.toString()) + "\": " + why);
  }
}
