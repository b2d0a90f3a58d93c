package org.tallywall.reports.results;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** The text of a file of results, or what is wrong with it. */
final class WholeText {
  private static final long LARGEST = 64L << 20;

  private WholeText() {}

  /**
   * Reads a file in UTF-8.
   *
   * @param file the file
   * @return its text, without a byte order mark
   * @throws WrongResultsException if it is missing, a folder, unreadable, too large or not UTF-8
   */
  static String read(Path file) {
    try {
      if (Files.isDirectory(file)) {
        throw wrong(file, "this is a folder, where a file is expected");
      }
      if (Files.size(file) > LARGEST) {
        throw wrong(file, "the file is larger than 64 MiB; the program writes none so large");
      }
      String text = Files.readString(file);
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (NoSuchFileException missing) {
      throw wrong(file, "there is no such file");
    } catch (CharacterCodingException binary) {
      throw wrong(file, "this is not a text in UTF-8; was the file changed?");
    } catch (IOException unreadable) {
      throw wrong(file, "the file cannot be read; check its permissions");
    }
  }

  private static WrongResultsException wrong(Path file, String why) {
    return new WrongResultsException(file + ": " + why);
  }
}
