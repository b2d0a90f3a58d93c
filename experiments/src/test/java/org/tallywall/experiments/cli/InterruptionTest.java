package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * A run that is told to end cleans up behind itself. The signal sent is the one that also a shell
 * can send to a process in the background; Ctrl-C goes the same way through the program.
 */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "there are no such signals")
class InterruptionTest {
  @TempDir Path folder;

  @Test
  void signal_inTheMiddleOfARun_leavesNothingBehind() throws Exception {
    Cards.small(folder);
    String study =
        Cards.write(
            folder,
            "study.json",
            """
            { "study": "long-look", "card": "small.json", "seed": 5, "deals": 100000000,
              "table": ["nearest", "nearest", "nearest", "nearest"], "records": 1000 }
            """);
    Path errors = folder.resolve("errors.txt");
    Process process =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElseThrow(),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "run",
                study)
            .directory(folder.toFile())
            .redirectError(errors.toFile())
            .redirectOutput(folder.resolve("output.txt").toFile())
            .start();
    try {
      Path results = folder.resolve("results");
      while (!Files.exists(results) || isEmpty(results)) {
        assertThat(process.isAlive()).isTrue();
        Thread.sleep(20);
      }
      Thread.sleep(500);
      process.destroy();

      assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
      assertThat(Files.readString(errors))
          .startsWith("tallywall: stopped after ")
          .endsWith(" of 100,000,000 deals; nothing was written\n");
      assertThat(results).doesNotExist();
    } finally {
      process.destroyForcibly();
    }
  }

  private static boolean isEmpty(Path results) throws IOException {
    try (Stream<Path> inside = Files.list(results)) {
      return inside.findFirst().isEmpty();
    }
  }
}
