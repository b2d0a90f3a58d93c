package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run would do. */
@Tag("long")
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

    Typed typed = Typed.run("run", study, "--out", out, "--threads", "1", "--dry-run");

    assertThat(typed.code()).isZero();
    assertThat(typed.out().replace('\n', ' '))
        .startsWith("look: 7,200 deals, about 36,000 games, in 15 blocks of 500 deals.")
        .contains("Results would go to " + out, "and the records of 10 deals")
        .containsPattern("They would take about [0-9,]+ MiB; [0-9,]+ MiB are free there")
        .containsPattern(
            "If the true difference is about [0-9,.]+ points per 100 games or more, the run will notice"
                + " it in 90 of 100 cases \\(95 % level; by the spread of [0-9,]+ deals\\)"
                + "|In [0-9,]+ deals? too few came out differently")
        .containsPattern(
            "plays [0-9,]+ deals? a (second|minute) \\([0-9,]+ games? a (second|minute)")
        .contains("so it would take about")
        .endsWith("Nothing was written. ");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).hasSize(2);
    }
  }

  /** Who sees what a run would do also learns that it would not begin, and what to write. */
  @Test
  void dryRun_whereTheRunWouldBeRefused_saysSo() throws IOException {
    Cards.small(folder);
    String study =
        Cards.write(
            folder,
            "look.json",
            """
            { "study": "look", "card": "small.json", "seed": 5, "deals": 4,
              "table": ["nearest", "nearest", "nearest", "nearest"] }
            """);
    String out = folder.resolve("out").toString();
    Typed run = Typed.run("run", study, "--out", out);
    assertThat(run.code()).isZero();
    assertThat(run.out().replace('\n', ' '))
        .as("the card is her own already")
        .contains("Next: find more questions with")
        .doesNotContain("your own card");

    Typed again = Typed.run("run", study, "--out", out, "--threads", "1", "--dry-run");
    Typed over =
        Typed.run(
            "run",
            study,
            "--out",
            out,
            "--dry-run",
            "--threads",
            "1",
            "--on-existing",
            "overwrite");
    Typed fresh = Typed.run("run", study, "--out", out + "2", "--threads", "1", "--dry-run");

    assertThat(again.code()).isZero();
    assertThat(again.out().replace('\n', ' '))
        .contains("Nothing was written.")
        .endsWith(
            "The run itself would be refused as it stands: \""
                + out
                + "\" is there already; name another folder with --out, or write --on-existing"
                + " overwrite to replace it. ");
    assertThat(over.out() + fresh.out()).doesNotContain("refused");
  }

  /**
   * Of a run that was cut off, what is left is counted, and what is there says how exact it gets.
   */
  @Test
  void dryRun_ofARunThatGoesOn_countsWhatIsLeft() throws IOException {
    Cards.small(folder);
    String study =
        Cards.write(
            folder,
            "look.json",
            """
            { "study": "look", "card": "small.json", "seed": 5, "deals": 1200,
              "arms": { "near": { "player": "nearest" }, "lot": { "player": "random-legal" } },
              "baseline": "near", "others": { "player": "nearest" }, "seats": 2,
              "primary": "win-rate", "secondary": ["points"] }
            """);
    Path out = folder.resolve("out");
    String[] words = {
      "run", study, "--out", out.toString(), "--on-existing", "resume", "--without-report"
    };
    assertThat(Typed.run(words).code()).isZero();
    words[words.length - 1] = "--dry-run";
    assertThat(Typed.run(words).out()).contains("is complete; there is nothing left to play");

    String detectable = Files.readAllLines(out.resolve("differences.csv")).get(1).split(",")[20];
    Files.delete(out.resolve("blocks/0000001.block"));
    Files.writeString(
        out.resolve("manifest.json"),
        Files.readString(out.resolve("manifest.json")).replace("\"complete\"", "\"stopped\""));
    String said = Typed.run(words).out().replace('\n', ' ');

    assertThat(said)
        .startsWith("look: 1,200 deals, about 2,400 games, in 3 blocks of 500 deals. 700 deals are")
        .contains(
            "are there already; left to play: 500 deals, in 1 block.", "so the rest would take")
        .contains("95 % level, shared among 2 declared comparisons; by the spread of 700 deals)");
    double noticed =
        Double.parseDouble(said.replaceAll(".*difference is about ([0-9.]+) games in 100.*", "$1"));
    assertThat(noticed / 100 / Double.parseDouble(detectable)).isBetween(0.85, 1.15);
  }
}
