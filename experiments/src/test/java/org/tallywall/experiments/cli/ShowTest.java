package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The notes of a study of one table begin with what it is asked about: its field "show". */
class ShowTest {
  private static final String STUDY =
      """
      { "study": "shown", "card": "small.json", "seed": 5, %s
        "table": ["nearest", "nearest", "nearest", "nearest"], "deals": 40 }
      """;

  @TempDir static Path folder;

  @BeforeAll
  static void play() {
    Cards.small(folder);
    run("played", "");
  }

  private static Path run(String name, String show) {
    Path out = folder.resolve(name);
    String study = Cards.write(folder, name + "-study.json", STUDY.formatted(show));
    Typed typed = Typed.run("run", study, "--out", out.toString(), "--without-report");
    assertThat(typed.code()).isZero();
    return out;
  }

  /** The notes of the run of all tests, told about something else: nothing is played again. */
  private static String notes(String show) throws IOException {
    Path out = folder.resolve("played");
    Path study = out.resolve("study.json");
    String written =
        Files.readString(study).replaceAll("\"show\" : \"\\w+\"", "\"show\" : \"" + show + "\"");
    assertThat(written).contains("\"show\" : \"" + show + "\"");
    Files.writeString(study, written);
    assertThat(Typed.run("report", out.toString(), "--format", "notes").code()).isZero();
    return Files.readString(out.resolve("notes.md"));
  }

  private static String first(String notes, String start) {
    return notes.lines().filter(line -> line.startsWith(start)).findFirst().orElse("");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lines | Of 100 wins, | The lines won with most often | The lines that win most, and who aimed at them.",
        "families | Of 100 wins, | What you aim at, what wins | What you aim at, what wins.",
        "seats | Of 100 games, East won | How often each seat wins, and what it earns | Where 100 games go.",
        "endings | Half of all games were over with | When and how 100 games end | When 100 games end.",
        "passes | The first three passes brought racks | The Charleston, pass by pass | What each pass brings."
      })
  void headlineFirstTableAndFirstChart_followTheWord(
      String word, String headline, String table, String chart) throws IOException {
    String notes = notes(word);

    assertThat(first(notes, "**")).startsWith("**" + headline);
    assertThat(first(notes, "## ")).startsWith("## " + table);
    String below = notes.substring(notes.indexOf("\n| "));
    assertThat(below.substring(0, below.indexOf("## How sure"))).contains("\n" + chart);
  }

  /** Lines and families begin alike: the lines are named by section and number. */
  @Test
  void linesAndFamilies_areNamedInTheHeadline() throws IOException {
    assertThat(first(notes("families"), "**")).containsAnyOf("with Ladders", "with Vanes");
    assertThat(first(notes("lines"), "**")).containsPattern("with (L|V|C)\\d");
  }

  /** The card of this test has three sections. */
  @Test
  void runWithoutTheWord_saysWhatItTook_andAnotherWordPlaysTheSame() {
    Path usual = run("usual", "");
    Path seats = run("seats", "\"show\": \"seats\",");

    assertThat(text(usual, "study.json")).contains("\"show\" : \"families\"");
    assertThat(text(seats, "study.json")).contains("\"show\" : \"seats\"");
    for (String file : List.of("win-rates.csv", "overall.csv", "families.csv", "passes.csv")) {
      assertThat(text(seats, file)).as(file).isEqualTo(text(usual, file));
    }
  }

  private static String text(Path out, String file) {
    try {
      return Files.readString(out.resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
