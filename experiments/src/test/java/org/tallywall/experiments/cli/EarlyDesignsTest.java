package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every design can be looked at before its end: its papers are made, marked, and say no wrong. */
@Tag("long")
class EarlyDesignsTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1600 | 'table': ['nearest', 'nearest', 'nearest', 'random-legal']",
        "1600 | 'sweep': {'player': 'newcomer', 'setting': 'overlooks.call', 'values': [0, 1], 'baseline': 0}, 'others': 'nearest', 'seats': 1, 'primary': 'points'",
        "2000 | 'round-robin': {'a': 'nearest', 'b': 'random-legal', 'c': 'newcomer', 'd': 'random-legal'}",
        "1600 | 'branch': {'at': 'stop', 'when': {'jokers': [0, 1, 2]}, 'player': 'newcomer', 'options': ['stop', 'go-on']}, 'others': 'nearest', 'seats': 0, 'primary': 'points'",
        "0 | 'arms': {'a': 'nearest', 'b': 'random-legal'}, 'baseline': 'a', 'others': 'nearest', 'seats': 3, 'primary': 'win-rate', 'until': {'rule': 'always-valid', 'half-width': 0.0001, 'at-most': 2100}"
      })
  void design_beforeItsEnd_hasMarkedPapers(long deals, String design) throws IOException {
    Cards.small(folder);
    String number = deals == 0 ? "" : ", \"deals\": " + deals;
    String study =
        Cards.write(
            folder,
            "study.json",
            "{ \"study\": \"s\", \"card\": \"small.json\", \"seed\": 4"
                + number
                + ", "
                + design.replace('\'', '"')
                + " }");
    Path out = folder.resolve("out");
    Typed run = Typed.run("run", study, "--out", out.toString(), "--without-report");
    assertThat(run.code()).as(run.err()).isZero();
    // Blocks of 500 deals, of a round-robin 600: of all designs three whole ones are left.
    Files.delete(out.resolve("blocks/0000003.block"));
    Path manifest = out.resolve("manifest.json");
    Files.writeString(manifest, Files.readString(manifest).replace("\"complete\"", "\"stopped\""));

    Typed report = Typed.run("report", out.toString());

    assertThat(report.code()).as(report.err()).isZero();
    assertThat(report.out()).contains("PROVISIONAL: ");
    Path early = out.resolve("provisional");
    assertThat(Files.readString(early.resolve("notes.md"))).contains("PROVISIONAL: ");
    String wins = Files.readString(early.resolve("win-rates.csv"));
    if (deals == 0) {
      assertThat(report.out()).contains("of at most 2,100 deals");
      assertThat(Files.readString(early.resolve("differences.csv"))).contains("always-valid");
      assertThat(wins).doesNotContain("holds at every look");
    } else {
      assertThat(wins).contains("Wilson, at a level that holds at every look");
    }
  }
}
