package org.tallywall.core.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that cannot be read say why, in words. */
class TextFileTest {
  @TempDir Path folder;

  @Test
  void text_withAByteOrderMark_isReadWithoutIt() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), "\uFEFF{\"ä\": 1}\r\n");
    assertThat(TextFile.read(file)).isEqualTo("{\"ä\": 1}\r\n");
  }

  @Test
  void missingFile_read_saysThatThereIsNone() {
    Path file = folder.resolve("none.json");
    refused(file, "there is no such file; check its name and folder");
  }

  @Test
  void folder_read_isNamedAsOne() {
    refused(folder, "this is a folder; name a file in it");
  }

  @Test
  void fileInAnotherEncoding_read_asksForUtf8() throws IOException {
    Path file = folder.resolve("latin.csv");
    Files.write(file, "Übung".getBytes(StandardCharsets.ISO_8859_1));
    refused(file, "this is not a text in UTF-8; save it as UTF-8");
  }

  @Test
  void hugeFile_read_isRefusedBeforeItIsLoaded() throws IOException {
    Path file = folder.resolve("huge.json");
    try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
      huge.setLength((64L << 20) + 1);
    }
    refused(file, "the file is larger than 64 MiB");
  }

  private static void refused(Path file, String why) {
    assertThatThrownBy(() -> TextFile.read(file))
        .isInstanceOf(FaultyFileException.class)
        .hasMessageStartingWith(file + ": " + why);
  }
}
