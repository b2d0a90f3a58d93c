package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run that may stop before its last deal stops at the same one when it was interrupted. */
@Tag("long")
class ResumeUntilTest {
  private static final String STUDY =
      """
      { "study": "look", "card": "small.json", "seed": 5,
        "until": { "rule": "always-valid", "half-width": 6, "at-most": 100000 },
        "arms": { "near": { "player": "nearest" }, "lot": { "player": "random-legal" } },
        "baseline": "near", "others": { "player": "nearest" }, "primary": "points" }
      """;

  @TempDir Path folder;

  @Test
  void interruptedRun_stopsAtTheSameBlockAndKeepsNoneBeyond() throws IOException {
    Cards.small(folder);
    String study = Cards.write(folder, "look.json", STUDY);
    Path whole = folder.resolve("whole");
    Typed.run("run", study, "--out", whole.toString(), "--without-report");
    int blocks = Child.blocks(whole);
    assertThat(blocks).isBetween(3, 20);
    Path out = folder.resolve("out");
    Files.createDirectories(out.resolve("blocks"));
    Files.copy(whole.resolve("study.json"), out.resolve("study.json"));
    String manifest = Files.readString(whole.resolve("manifest.json"));
    Files.writeString(
        out.resolve("manifest.json"), manifest.replace("\"complete\"", "\"running\""));
    Path first = whole.resolve("blocks/0000000.block");
    Files.copy(first, out.resolve("blocks/0000000.block"));
    Files.copy(first, out.resolve("blocks/0000099.block"));

    Typed resumed =
        Typed.run(
            "run", study, "--out", out.toString(), "--on-existing", "resume", "--without-report");

    assertThat(resumed.code()).as(resumed.err()).isZero();
    assertThat(Child.blocks(out)).isEqualTo(blocks);
    assertThat(out.resolve("blocks/0000099.block")).doesNotExist();
    assertThat(results(out)).isEqualTo(results(whole));
  }

  private static Map<String, String> results(Path results) throws IOException {
    Map<String, String> files = RunCommandTest.files(results);
    files.remove("manifest.json");
    return files;
  }
}
