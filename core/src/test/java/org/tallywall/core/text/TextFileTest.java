package org.tallywall.core.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
    refused(file, "this is not a text in UTF-8; save it as CSV (UTF-8)");
    Path json = folder.resolve("latin.json");
    Files.write(json, "Übung".getBytes(StandardCharsets.ISO_8859_1));
    refused(json, "this is not a text in UTF-8; save it as UTF-8");
  }

  @ParameterizedTest
  @CsvSource({
    "a.xlsx, words, a spreadsheet",
    "a.XLS, words, a spreadsheet",
    "a.ods, words, a spreadsheet",
    "a.docx, words, a document of a word processor",
    "a.pdf, words, a PDF",
    "a.json, PK\u0003\u0004 packed, a spreadsheet or a document",
    "a.csv, '{\\rtf1 x}', a document of a word processor",
    "a, %PDF-1.7, a PDF",
  })
  void fileOfAnotherProgram_read_isNamedForWhatItIs(String name, String text, String what)
      throws IOException {
    Path file = Files.writeString(folder.resolve(name), text);
    refused(file, "this is " + what + ", not plain text; save it as plain text (UTF-8)");
    assertThatThrownBy(() -> TextFile.read(file, "save it as CSV (UTF-8)"))
        .hasMessage(file + ": this is " + what + ", not plain text; save it as CSV (UTF-8)");
  }

  @Test
  void fileOfAnOlderSpreadsheet_read_isSeenByItsFirstBytes() throws IOException {
    byte[] old = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 1};
    Path file = Files.write(folder.resolve("card.csv"), old);
    refused(file, "this is a spreadsheet or a document, not plain text");
  }

  /** A name says nothing of a file that begins otherwise and has another ending. */
  @Test
  void textWithAnOrdinaryName_read_isText() throws IOException {
    Path file = Files.writeString(folder.resolve("docx.txt"), "PK and %PDF");
    assertThat(TextFile.read(file)).isEqualTo("PK and %PDF");
  }

  @Test
  void hugeFile_read_isRefusedWithTheBound() throws IOException {
    Path file = folder.resolve("huge.json");
    try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
      huge.setLength(FileLimits.LARGEST_FILE + 1L);
    }
    refused(file, "the file is larger than this program reads (16 MiB)");
  }

  @Test
  void largestFile_read_isRead() throws IOException {
    Path file = folder.resolve("large.json");
    Files.write(file, new byte[FileLimits.LARGEST_FILE]);
    assertThat(TextFile.read(file)).hasSize(FileLimits.LARGEST_FILE);
  }

  @Test
  void bytes_beyondTheirBound_areRefusedWithIt() throws IOException {
    Path file = Files.write(folder.resolve("few"), new byte[10]);
    assertThat(TextFile.bytes(file, 10)).hasSize(10);
    assertThatThrownBy(() -> TextFile.bytes(file, 9)).hasMessageContaining("reads (9 bytes)");
  }

  /** A device has no end, and a pipe waits for whoever writes into it. */
  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void device_read_isRefusedUnopened() {
    refused(Path.of("/dev/zero"), "this is a device or a pipe; name a file on a disk");
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void fileThatHidesItsSize_read_isReadToItsEnd() {
    assertThat(TextFile.read(Path.of("/proc/self/status"))).startsWith("Name:");
    assertThatThrownBy(() -> TextFile.bytes(Path.of("/proc/self/status"), 10))
        .hasMessageContaining("larger than this program reads (10 bytes)");
  }

  @Test
  void stream_read_isTheTextWithoutAByteOrderMark() {
    assertThat(TextFile.read("standard input", stream("\uFEFFseat 0\n"))).isEqualTo("seat 0\n");
  }

  @Test
  void stream_ofTheLargestSize_isReadAndOneByteMoreRefused() {
    InputStream largest = new ByteArrayInputStream(new byte[FileLimits.LARGEST_FILE]);
    assertThat(TextFile.read("standard input", largest)).hasSize(FileLimits.LARGEST_FILE);
    InputStream huge = new ByteArrayInputStream(new byte[FileLimits.LARGEST_FILE + 1]);
    assertThatThrownBy(() -> TextFile.read("standard input", huge))
        .isInstanceOf(FaultyFileException.class)
        .hasMessageStartingWith("standard input: this is larger than this program reads (16 MiB)");
  }

  @Test
  void stream_thatEndsInAFault_saysThatItCannotBeReadToItsEnd() {
    InputStream broken =
        new SequenceInputStream(
            stream("seat 0"),
            new InputStream() {
              @Override
              public int read() throws IOException {
                throw new IOException("gone");
              }
            });
    assertThatThrownBy(() -> TextFile.read("standard input", broken))
        .isInstanceOf(FaultyFileException.class)
        .hasMessage("standard input: it cannot be read to its end; try once more");
  }

  @Test
  void stream_inAnotherEncoding_asksForUtf8() {
    byte[] latin = "Übung".getBytes(StandardCharsets.ISO_8859_1);
    assertThatThrownBy(() -> TextFile.read("standard input", new ByteArrayInputStream(latin)))
        .hasMessage("standard input: this is not a text in UTF-8; save it as UTF-8");
  }

  private static InputStream stream(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  private static void refused(Path file, String why) {
    assertThatThrownBy(() -> TextFile.read(file))
        .isInstanceOf(FaultyFileException.class)
        .hasMessageStartingWith(file + ": " + why);
  }
}
