package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A run that is told to end finishes and keeps what it is playing, and says how to go on. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "there are no such signals")
class InterruptionTest {
  private static final String STUDY =
      """
      { "study": "long-look", "card": "small.json", "seed": 5, "deals": 100000000,
        "table": ["random-legal", "random-legal", "random-legal", "random-legal"],
        "records": 1000 }
      """;

  @TempDir Path folder;

  private Path results;

  @BeforeEach
  void write() {
    Cards.small(folder);
    Cards.write(folder, "look.json", STUDY);
    results = folder.resolve("results/long-look");
  }

  private Child started() throws IOException, InterruptedException {
    Child child = Child.start(folder, "run", "look.json");
    child.awaitBlocks(results, 1);
    assertThat(child.alive()).as(child.errors()).isTrue();
    return child;
  }

  private void assertStopped(Child child) throws IOException {
    assertThat(child.errors())
        .containsPattern("tallywall: stopped after [0-9,]+ of 100,000,000 deals; they are kept")
        .endsWith("go on with: tallywall run look.json --on-existing resume\n");
    assertThat(Files.readString(results.resolve("manifest.json"))).contains("\"stopped\"");
    assertThat(results.resolve("win-rates.csv")).doesNotExist();
    assertThat(results.resolve("stop")).doesNotExist();
    try (var files = Files.list(results.resolve("blocks"))) {
      assertThat(files.filter(file -> file.toString().endsWith(".part"))).isEmpty();
    }
  }

  @Test
  void controlC_inTheMiddleOfARun_keepsTheBlocksAndSaysHowToGoOn() throws Exception {
    try (Child child = started()) {
      child.signal("INT");

      assertThat(child.end()).isEqualTo(130);
      assertThat(child.errors()).contains("tallywall: stopping when the blocks");
      assertStopped(child);
    }
  }

  /** The second one leaves the blocks being played; those that are whole stay. */
  @Test
  @Tag("long")
  void controlC_twice_keepsTheBlocksThatAreWhole() throws Exception {
    try (Child child = started()) {
      child.signal("INT");
      child.signal("INT");

      assertThat(child.end()).isEqualTo(130);
      assertStopped(child);
      String kept = child.errors().replaceAll("(?s).*stopped after ([0-9,]+) of .*", "$1");
      assertThat(Integer.parseInt(kept.replace(",", ""))).isEqualTo(500 * Child.blocks(results));
    }
  }

  @ParameterizedTest
  @Tag("long")
  @ValueSource(strings = {"TERM", "HUP"})
  void requestToEnd_doesTheSameAsControlC(String signal) throws Exception {
    try (Child child = started()) {
      child.signal(signal);

      assertThat(child.end()).isEqualTo(130);
      assertStopped(child);
    }
  }

  @Test
  @Tag("long")
  void controlC_whilePapersAreMade_leavesNoHalfPaper() throws Exception {
    Cards.write(folder, "look.json", STUDY.replace("100000000", "500"));
    try (Child child = Child.start(folder, "run", "look.json")) {
      child.awaitFolder(results.resolve("charts"));
      child.signal("INT");

      if (child.end() == 130) {
        assertThat(child.errors())
            .contains("stopped while papers were made; all numbers are there")
            .doesNotContain("blocks being played");
        assertThat(results.resolve("report.html")).doesNotExist();
      } else {
        assertThat(results.resolve("report.html")).exists();
      }
      assertThat(child.errors()).doesNotContain("internal error");
      try (var files = Files.walk(results)) {
        assertThat(files.filter(file -> file.toString().endsWith(".part"))).isEmpty();
      }
    }
  }

  @Test
  @Tag("long")
  void stopFile_inTheMiddleOfARun_doesTheSame() throws Exception {
    try (Child child = started()) {
      Files.createFile(results.resolve("stop"));

      assertThat(child.end()).isEqualTo(130);
      assertStopped(child);
    }
  }

  /** Papers of what is there are made while the run goes on, which takes no notice. */
  @Test
  @Tag("long")
  void report_whileARunGoesOn_showsWhatIsThere() throws Exception {
    try (Child child = Child.start(folder, "run", "look.json")) {
      // So many that at least two of the first are among them, whatever the order.
      child.awaitBlocks(results, 2 * Runtime.getRuntime().availableProcessors() + 4);

      Typed report = Typed.run("report", results.toString(), "--format", "notes");

      assertThat(report.code()).as(report.err()).isZero();
      assertThat(report.out()).containsPattern("PROVISIONAL: [0-9,]+ of 100,000,000 deals");
      assertThat(child.alive()).as(child.errors()).isTrue();
      child.signal("INT");
      assertThat(child.end()).isEqualTo(130);
      assertStopped(child);
    }
  }

  @Test
  @Tag("long")
  void secondRun_inTheSameFolder_isRefusedWhileTheFirstGoesOn() throws Exception {
    try (Child child = started()) {
      for (String policy : new String[] {"resume", "overwrite"}) {
        Typed second =
            Typed.run(
                "run",
                folder.resolve("look.json").toString(),
                "--out",
                results.toString(),
                "--on-existing",
                policy);

        assertThat(second.code()).isEqualTo(2);
        assertThat(second.err())
            .isEqualTo(
                "tallywall: another run is going on in \""
                    + results
                    + "\"; wait for its end, stop it, or name another folder with --out\n");
      }
      assertThat(child.alive()).isTrue();
    }
  }
}
