package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.store.Checkpoint;
import org.tallywall.experiments.store.Manifest;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.strategies.catalog.Catalog;

/** A long run goes on at once: its blocks are read quickly. */
@Tag("long")
class ManyBlocksTest {
  private static final int BLOCKS = 20_000;

  private static final String STUDY =
      """
      { "study": "look", "card": "card.json", "seed": 5, "deals": %d,
        "arms": { "near": { "player": "nearest" }, "lot": { "player": "random-legal" } },
        "baseline": "near", "others": { "player": "nearest" }, "primary": "points" }
      """;

  @TempDir Path folder;

  /**
   * The goal is 3 s on a quiet machine with two processors, the start of Java and the tables
   * included. How long it took is printed for whoever wants to know, and judged by nobody: played
   * again, the blocks would take hours.
   */
  @Test
  void folderWithTwentyThousandBlocks_isResumedFromThem() throws Exception {
    Files.copy(Path.of("cards/saltmarsh-quay.json"), folder.resolve("card.json"));
    fill();
    Instant start = Instant.now();
    try (Child child =
        Child.start(
            folder,
            "run",
            "look.json",
            "--out",
            "out",
            "--on-existing",
            "resume",
            "--without-report")) {
      assertThat(child.end()).as(child.errors()).isZero();
    }
    Duration taken = Duration.between(start, Instant.now());

    assertThat(Files.readString(folder.resolve("out/manifest.json")))
        .contains("\"complete\"", "\"deals\" : " + 500 * BLOCKS);
    System.out.println("resume of " + BLOCKS + " blocks: " + taken.toMillis() + " ms");
  }

  /** Plays eight blocks and writes their counts again and again under the other numbers. */
  private void fill() throws IOException {
    String few = Cards.write(folder, "few.json", STUDY.formatted(4_000));
    Typed.run("run", few, "--out", folder.resolve("few").toString(), "--without-report");
    Path file = Path.of(Cards.write(folder, "look.json", STUDY.formatted(500L * BLOCKS)));
    Study study = StudyFile.read(file, Changes.NONE, Catalog.standard());
    Manifest wanted = Manifest.begin(study, Version.text(), List.of(), 2, Instant.EPOCH);
    Path blocks = Files.createDirectories(folder.resolve("out/blocks"));
    Files.writeString(folder.resolve("out/manifest.json"), wanted.json());
    byte[] fewDigest = Manifest.read(folder.resolve("few")).orElseThrow().digest();
    for (int number = 0; number < BLOCKS; number++) {
      Block played = Block.of(number % 8, 4_000, 500);
      Path source = folder.resolve("few/blocks/000000" + number % 8 + ".block");
      byte[] content = Checkpoint.read(fewDigest, played, Files.readAllBytes(source)).content();
      String name = "0000000".substring(Integer.toString(number).length()) + number + ".block";
      Block block = Block.of(number, 500L * BLOCKS, 500);
      Files.write(blocks.resolve(name), Checkpoint.file(wanted.digest(), block, content));
    }
  }
}
