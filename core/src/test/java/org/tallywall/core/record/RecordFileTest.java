package org.tallywall.core.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.text.FileLimits;

/** Files of records that were cut, added to or made to do harm. Time limits end what would hang. */
@Timeout(60)
class RecordFileTest {
  private static final GameRecord GAME = Records.play(TableRules.STANDARD, 3, 3);
  private static final String LINE = RecordJson.line(GAME);

  @TempDir Path folder;
  private Path plain;
  private Path packed;

  @BeforeEach
  void name() {
    plain = folder.resolve("games.jsonl");
    packed = folder.resolve("games.jsonl.gz");
  }

  private static byte[] gzip(String text) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (OutputStream out = new GZIPOutputStream(bytes)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return bytes.toByteArray();
  }

  /** Reads to the end; how many games there are. */
  private static int read(Path file) throws IOException {
    int games = 0;
    try (RecordFile records = RecordFile.open(file)) {
      while (records.next() != null) {
        games++;
      }
    }
    return games;
  }

  private static String refused(Path file) {
    return catchThrowableOfType(FaultyFileException.class, () -> read(file)).getMessage();
  }

  @Test
  void fileThatBreaksOff_isRefusedAtItsLine() throws IOException {
    Files.writeString(plain, LINE + "\n" + LINE.substring(0, 900));
    assertThat(refused(plain)).startsWith(plain + " game line 2:1:");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r", "\n\n", "\r\n\r\n", "\n \t \r\n"})
  void lineEnds_ofEveryKind_partRecordsAndAreCounted(String end) throws IOException {
    Files.writeString(plain, LINE + end + LINE + end);
    assertThat(read(plain)).isEqualTo(2);
    Files.writeString(plain, LINE + end + "{");
    int line = 1 + Math.toIntExact((end + "x").lines().count() - 1);
    assertThat(refused(plain)).startsWith(plain + " game line " + line + ":");
  }

  @Test
  void fileThatIsNotThere_isAnIoException() {
    assertThatThrownBy(() -> read(plain)).isInstanceOf(NoSuchFileException.class);
  }

  @Test
  void folder_isRefused() {
    assertThat(refused(folder)).endsWith("this is a folder; name a file in it");
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void device_isRefusedUnopened() {
    assertThat(refused(Path.of("/dev/zero"))).contains("this is a device or a pipe");
  }

  @Test
  void lineOfOtherThanText_isRefused() throws IOException {
    Files.write(plain, new byte[] {'{', '"', (byte) 0xed, (byte) 0xa0, (byte) 0x80, '"'});
    assertThat(refused(plain)).endsWith("the line is not a text in UTF-8");
  }

  @Test
  void packedFile_isRead() throws IOException {
    Files.write(packed, gzip((LINE + "\n").repeat(100)));
    assertThat(read(packed)).isEqualTo(100);
  }

  /** Another program may write a name, a comment, a check and a field of its own before it. */
  @Test
  void packedFile_withEveryFieldInItsHeader_isRead() throws IOException {
    byte[] plainHeader = gzip(LINE);
    byte[] longHeader = {
      0x1f, (byte) 0x8b, 8, 31, 0, 0, 0, 0, 0, 3, 2, 0, 7, 7, 'n', 0, 'c', 0, 1, 2
    };
    try (OutputStream out = Files.newOutputStream(packed)) {
      out.write(longHeader);
      out.write(plainHeader, 10, plainHeader.length - 10);
    }
    assertThat(read(packed)).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"x", "\n", "garbage behind the end", "\u001f"})
  void garbage_behindThePackedRecords_isAFault(String garbage) throws IOException {
    Files.write(packed, gzip(LINE + "\n"));
    Files.writeString(packed, garbage, java.nio.file.StandardOpenOption.APPEND);
    assertThat(refused(packed))
        .isEqualTo(packed + ": something follows the end of the packed records; take it out");
  }

  @Test
  void secondPiece_behindThePackedRecords_isAFault() throws IOException {
    try (SequenceInputStream both =
        new SequenceInputStream(
            new java.io.ByteArrayInputStream(gzip(LINE + "\n")),
            new java.io.ByteArrayInputStream(gzip(LINE + "\n")))) {
      Files.write(packed, both.readAllBytes());
    }
    assertThat(refused(packed)).contains("something follows the end of the packed records");
  }

  @Test
  void packedFile_cutOrChangedAnywhere_neverGivesItsRecordsAsWhole() throws IOException {
    byte[] whole = gzip(LINE + "\n");
    for (int length = 0;
        length < whole.length;
        length += length < 30 || length > whole.length - 30 ? 1 : 97) {
      Files.write(packed, Arrays.copyOf(whole, length));
      assertThatThrownBy(() -> read(packed)).isInstanceOf(EOFException.class);
    }
    for (int at = whole.length - 8; at < whole.length; at++) {
      byte[] changed = whole.clone();
      changed[at] ^= 1;
      Files.write(packed, changed);
      assertThatThrownBy(() -> read(packed)).isInstanceOf(ZipException.class);
    }
    Files.writeString(packed, LINE);
    assertThatThrownBy(() -> read(packed)).isInstanceOf(ZipException.class);
  }

  /** Few bytes that unfold to a line of gigabytes, or to nothing but empty lines. */
  @ParameterizedTest
  @ValueSource(strings = {"x", "\n", " ", "\r\n"})
  void packedLine_thatUnfoldsWithoutEnd_isRefusedAtTheBound(String part) throws IOException {
    byte[] block = part.repeat((1 << 20) / part.length()).getBytes(StandardCharsets.UTF_8);
    try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(packed))) {
      for (int megabyte = 0; megabyte < 40; megabyte++) {
        out.write(block);
      }
    }
    assertThat(refused(packed))
        .endsWith("the line is longer than any record (" + FileLimits.LONGEST_LINE + " letters)");
  }
}
