package org.tallywall.core.text;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/** Reads whole text files in UTF-8 and says in plain words why one cannot be read. */
public final class TextFile {
  private static final long LARGEST = 64L << 20;

  private TextFile() {}

  /**
   * The text of a file, without a byte order mark.
   *
   * @param file the file
   * @return its text
   * @throws FaultyFileException if it is missing, a folder, unreadable, too large or not UTF-8
   */
  public static String read(Path file) {
    try {
      if (Files.isDirectory(file)) {
        throw unusable(file, "this is a folder; name a file in it");
      }
      if (Files.size(file) > LARGEST) {
        throw unusable(file, "the file is larger than 64 MiB; is this the right one?");
      }
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
              .toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (NoSuchFileException missing) {
      throw unusable(file, "there is no such file; check its name and folder");
    } catch (CharacterCodingException binary) {
      throw unusable(file, "this is not a text in UTF-8; save it as UTF-8");
    } catch (IOException unreadable) {
      throw unusable(file, "the file cannot be read; check its permissions");
    }
  }

  private static FaultyFileException unusable(Path file, String why) {
    return new FaultyFileException(file.toString(), List.of(new Fault(0, 0, "", why)));
  }
}
