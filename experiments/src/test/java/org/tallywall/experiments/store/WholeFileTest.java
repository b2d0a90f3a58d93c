package org.tallywall.experiments.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.experiments.error.FailedException;

/** Files appear whole under their name, or not at all. */
class WholeFileTest {
  @TempDir Path folder;

  @Test
  void file_thatCannotBeFilled_leavesTheOlderOne() throws IOException {
    Path file = Files.writeString(folder.resolve("card.json"), "old");

    assertThatThrownBy(
            () ->
                WholeFile.grow(
                    file,
                    part -> {
                      Files.writeString(part, "ha");
                      throw new IOException("No space left on device");
                    }))
        .isInstanceOf(FailedException.class)
        .hasMessageContaining("card.json")
        .hasMessageContaining("No space left on device");
    assertThat(file).hasContent("old");
    try (Stream<Path> inside = Files.list(folder)) {
      assertThat(inside).containsExactly(file);
    }
  }

  @Test
  void reasons_areSaidInPlainWords() {
    assertThat(reason(new AccessDeniedException("x")))
        .isEqualTo("this folder may not be written to");
    assertThat(reason(new FileSystemException("x", null, "Read-only file system")))
        .isEqualTo("Read-only file system");
    assertThat(reason(new IOException())).isEqualTo("the disk may be full");
  }

  private static String reason(IOException error) {
    String message = WholeFile.unwritten(Path.of("x"), error).getMessage();
    return message.substring(message.indexOf(": ") + 2);
  }

  @Test
  void records_fullDisk_areReported() {
    Path full = Path.of("/dev/full");
    Assumptions.assumeTrue(Files.exists(full), "a device that is always full");

    assertThatThrownBy(() -> RecordWriter.write(full, false, List.of("{}")))
        .isInstanceOf(FailedException.class)
        .hasMessageContaining("could not be written");
  }
}
