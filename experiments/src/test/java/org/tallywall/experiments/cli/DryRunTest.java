package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run would do. */
class DryRunTest {
  @TempDir Path folder;

  @Test
  void dryRun_saysWhatWouldBeDoneAndWritesNothing() throws IOException {
    Cards.small(folder);
    String study =
        Cards.write(
            folder,
            "look.json",
            """
            { "study": "look", "card": "small.json", "seed": 5, "deals": 7200,
              "arms": { "near": { "player": "nearest" }, "lot": { "player": "random-legal" } },
              "baseline": "near", "others": { "player": "nearest" },
              "primary": "points", "records": 10 }
            """);
    String out = folder.resolve("out").toString();

    Typed typed = Typed.run("run", study, "--out", out, "--dry-run");

    assertThat(typed.code()).isZero();
    assertThat(typed.out().replace('\n', ' '))
        .startsWith("look: 7,200 deals, about 36,000 games, in 15 blocks of 500 deals.")
        .contains("Results would go to " + out, "and the records of 10 deals")
        .containsPattern("They would take about [0-9,]+ MiB; [0-9,]+ MiB are free there")
        .containsPattern("plays [0-9,]+ deals a second \\([0-9,]+ games\\), so it would take about")
        .endsWith("Nothing was written. ");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).hasSize(2);
    }
  }
}
