package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.text.Sha256;

/**
 * Runs that are killed at random moments and go on give the same bytes as one that was left in
 * peace: in the tables, the records and the stored blocks. The moments depend on the clock, so they
 * are other ones each time; what must come out does not.
 */
@Tag("long")
class KillTest {
  private static final String STUDY =
      """
      { "study": "look", "card": "small.json", "seed": 5, "deals": %d,
        "arms": { "near": { "player": "nearest" }, "lot": { "player": "random-legal" } },
        "baseline": "near", "others": { "player": "nearest" },
        "seats": 1, "primary": "points", "records": 700 }
      """;

  @TempDir Path folder;

  private Path peace;
  private Path killed;

  @BeforeEach
  void write() {
    Cards.small(folder);
    peace = folder.resolve("peace");
    killed = folder.resolve("killed");
  }

  @Test
  void threeKills_resumed_giveTheBytesOfAnUndisturbedRun() throws Exception {
    killAndResume(3, 3_000, 900);
  }

  @Test
  @Tag("long")
  void hundredKills_resumed_giveTheBytesOfAnUndisturbedRun() throws Exception {
    killAndResume(100, 15_000, 1_200);
  }

  private void killAndResume(int kills, int deals, int mostMillis) throws Exception {
    String study = Cards.write(folder, "look.json", STUDY.formatted(deals));
    assertThat(Typed.run("run", study, "--out", peace.toString()).code()).isZero();
    Random moments = new Random();
    int most = mostMillis;
    int effective = 0;
    for (int started = 0; effective < kills; started++) {
      assertThat(started).as("runs started for " + effective + " kills").isLessThan(20 * kills);
      try (Child child = resumed()) {
        // The first kills fall into the start and the play, the last ones into the writing of
        // results.
        if (10 * effective >= 7 * kills) {
          child.awaitBlocks(killed, deals / 500);
        }
        Thread.sleep(moments.nextInt(most));
        boolean tooLate = !child.alive();
        child.kill();
        effective += tooLate ? 0 : 1;
        most = tooLate ? 1 + most / 2 : most;
      }
      assertNothingHalfIsTaken();
      if (complete()) {
        beginAnew();
      }
    }
    try (Child child = resumed()) {
      assertThat(child.end()).as(child.errors()).isZero();
    }
    assertThat(digests(killed)).isEqualTo(digests(peace));
  }

  private Child resumed() throws IOException {
    return Child.start(
        folder, "run", "look.json", "--out", killed.toString(), "--on-existing", "resume");
  }

  private boolean complete() throws IOException {
    Path manifest = killed.resolve("manifest.json");
    return Files.exists(manifest) && Files.readString(manifest).contains("\"complete\"");
  }

  /** A run that came to its end before it could be killed is none that was killed. */
  private void beginAnew() throws IOException {
    try (Stream<Path> files = Files.walk(killed)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  /** What the manifest calls complete is; papers are made of it afterwards. */
  private void assertNothingHalfIsTaken() throws IOException {
    if (complete()) {
      Map<String, String> wanted = digests(peace);
      wanted.keySet().removeIf(name -> name.matches("(notes|report|charts|games).*"));
      assertThat(digests(killed)).containsAllEntriesOf(wanted);
    }
  }

  /** Digests of every file but the manifest and the lock; packed records are unpacked before. */
  private static Map<String, String> digests(Path results) throws IOException {
    Map<String, String> files = new TreeMap<>(RunCommandTest.files(results));
    files.remove("manifest.json");
    files.replaceAll((name, text) -> Sha256.of(text.getBytes(StandardCharsets.UTF_8)));
    try (Stream<Path> blocks = Files.list(results.resolve("blocks"))) {
      for (Path block : blocks.toList()) {
        if (!block.getFileName().toString().equals("lock")) {
          files.put(block.getFileName().toString(), Sha256.of(Files.readAllBytes(block)));
        }
      }
    }
    return files;
  }
}
