package org.tallywall.reports.results;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What may lie where a file of results is expected: it is said what it is, and nothing waits. */
@Timeout(value = 2, unit = TimeUnit.MINUTES)
class FilesOfResultsTest {
  private static final String MANIFEST =
      """
      { "tallywall": "0.1.0", "stream-version": 1, "study": "look", "card": "A card",
        "card-digest": "sha256:1", "seed": 7, "deals": 20, "games": 20, "faults": 0 }
      """;

  @TempDir private Path folder;

  @BeforeEach
  void fill() throws IOException {
    Files.writeString(folder.resolve("manifest.json"), MANIFEST);
    Files.writeString(folder.resolve("study.json"), "{ \"study\": \"look\" }");
    Files.writeString(folder.resolve("some.csv"), "arm,points\nA,1.5\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"manifest.json", "study.json", "some.csv"})
  void file_thatIsNone_isSaid(String name) throws IOException, InterruptedException {
    Path file = folder.resolve(name);
    Files.delete(file);
    Files.createDirectory(file);
    refused(name, "this is a folder");
    Files.delete(file);

    Process fifo = new ProcessBuilder("mkfifo", file.toString()).start();
    assertThat(fifo.waitFor()).isZero();
    refused(name, "this is a pipe or a device");
    Files.delete(file);

    Files.createSymbolicLink(file, Path.of("/dev/zero"));
    refused(name, "this is a pipe or a device");
    Files.delete(file);

    try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
      sparse.setLength(8L << 30);
    }
    refused(name, "the file is larger than this program reads (32 MiB)");
    Files.write(file, new byte[] {'{', (byte) 0xff});
    refused(name, "this is not a text in UTF-8");
  }

  @Test
  void link_thatLeadsNowhere_isSaid() throws IOException {
    Files.createSymbolicLink(folder.resolve("loop.csv"), Path.of("loop.csv"));
    refused("loop.csv", "check its permissions and where links lead");
    Files.delete(folder.resolve("loop.csv"));
    Files.createSymbolicLink(folder.resolve("gone.csv"), Path.of("nowhere"));
    refused("gone.csv", "this link leads to no file");
  }

  @Test
  void json_asDeepAsAWell_isRefused() throws IOException {
    for (String deep : List.of("[".repeat(100_000), "{\"a\":".repeat(100_000))) {
      Files.writeString(folder.resolve("study.json"), deep);
      refused("study.json", "this is not JSON");
    }
    Files.writeString(folder.resolve("study.json"), "{ \"n\": 1e9999999999 }");
    refused("study.json", "");
    Files.writeString(folder.resolve("study.json"), "{ \"n\": " + "9".repeat(2_000) + " }");
    refused("study.json", "");
  }

  private void refused(String name, String words) {
    assertThatThrownBy(() -> ResultsFolder.read(folder, new ThisProgram("0.1.0", 1)))
        .isInstanceOf(WrongResultsException.class)
        .hasMessageContaining(name)
        .hasMessageContaining(words);
  }
}
