package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.experiments.paper.SampleResults;

/** The command that makes papers again: what it makes, what it refuses, in which words. */
class ReportCommandTest {
  @TempDir private Path folder;

  private String run(String... more) {
    String study =
        Cards.write(
            folder,
            "look.json",
            "{ \"study\": \"look\", \"card\": \"small.json\", \"seed\": 3, \"table\": [\"nearest\","
                + " \"nearest\", \"nearest\", \"nearest\"], \"deals\": 40, \"records\": 1 }");
    Cards.small(folder);
    Path out = folder.resolve("results");
    String[] words = new String[more.length + 4];
    System.arraycopy(new String[] {"run", study, "--out", out.toString()}, 0, words, 0, 4);
    System.arraycopy(more, 0, words, 4, more.length);
    assertThat(Typed.run(words).code()).isZero();
    return out.toString();
  }

  /** What a run makes at its end, report makes again from the results alone. */
  @Test
  void report_ofARun_makesTheSamePapersAgain() throws IOException {
    String out = run();
    String page = Files.readString(Path.of(out, "report.html"));
    String notes = Files.readString(Path.of(out, "notes.md"));
    Files.delete(Path.of(out, "report.html"));
    Files.delete(Path.of(out, "games/game-0.html"));

    Typed typed = Typed.run("report", out);
    assertThat(typed.code()).isZero();
    assertThat(typed.err()).isEmpty();
    assertThat(typed.out())
        .isEqualTo("Made in " + out + ": notes.md, notes.html, report.html, charts, games\n");
    assertThat(Path.of(out, "report.html")).hasContent(page);
    assertThat(Path.of(out, "notes.md")).hasContent(notes);
    assertThat(page).contains("href=\"games/game-0.html\"").doesNotContain("2222x");
  }

  @Test
  void report_namedByAPaper_isMadeInItsFolder() throws IOException {
    String out = run();
    Files.delete(Path.of(out, "notes.md"));

    Typed typed = Typed.run("report", Path.of(out, "report.html").toString());

    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    assertThat(Path.of(out, "notes.md")).exists();
  }

  @Test
  void run_withoutReport_leavesPapersToReport() {
    String out = run("--without-report");
    assertThat(Path.of(out, "report.html")).doesNotExist();
    assertThat(Path.of(out, "win-rates.csv")).exists();
    assertThat(Typed.run("report", out, "--format", "notes, page").out())
        .endsWith("notes.md, notes.html, report.html\n");
    assertThat(Path.of(out, "report.html")).exists();
    assertThat(Path.of(out, "games")).doesNotExist();
  }

  @Test
  void report_withCard_printsTheLines() throws IOException {
    String out = run("--without-report");
    assertThat(Typed.run("report", out, "--with-card", "--format", "page").code()).isZero();
    assertThat(Files.readString(Path.of(out, "report.html"))).contains("2222x 33y 444x 555z 66y");
  }

  /** Without the card there are no pages of games, and the rest is made. */
  @Test
  void report_withTheCardGone_saysSoAndMakesTheRest() throws IOException {
    String out = run("--without-report");
    Files.delete(folder.resolve("small.json"));
    Typed typed = Typed.run("report", out);
    assertThat(typed.code()).isZero();
    assertThat(typed.err()).contains("no pages of games", "small.json", "is not there any more");
    assertThat(Path.of(out, "report.html")).exists();
    assertThat(Typed.run("report", out, "--with-card").code()).isEqualTo(2);
  }

  @Test
  void report_ofDamagedRecords_isRefusedInPlainWords() throws IOException {
    String out = run("--without-report");
    Files.write(Path.of(out, "records.jsonl.gz"), new byte[] {31, -117, 8, 0, 1});
    Typed typed = Typed.run("report", out);
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("records.jsonl.gz", "damaged").doesNotContain("Exception");
  }

  @Test
  void report_ofDamagedNumbers_namesFileAndLine() throws IOException {
    String out = run("--without-report");
    Path wins = Path.of(out, "win-rates.csv");
    Files.writeString(wins, Files.readString(wins).substring(0, 900));
    Typed typed = Typed.run("report", out);
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("win-rates.csv", "line ").doesNotContain("Exception");
    assertThat(Path.of(out, "report.html")).doesNotExist();
  }

  @Test
  void report_wronglyAsked_saysWhatToWrite() {
    String out = run("--without-report");
    refused("did you mean \"notes\"?", "report", out, "--format", "nots");
    refused("--out is for a page of several", "report", out, "--out", "x.html");
    refused("holds no results", "report", folder.toString());
    refused("there is no folder", "report", folder.resolve("none").toString());
    refused("leave out --format and --with-card", "report", out, out, "--format", "page");
  }

  @Test
  void pack_ofTwo_isOnePageAndIsNotOverwritten() throws IOException {
    String arms = SampleResults.arms(folder.resolve("arms")).toString();
    String sweep = SampleResults.sweep(folder.resolve("sweep")).toString();
    String pack = folder.resolve("evening.html").toString();
    Typed typed = Typed.run("report", arms, sweep, "--out", pack);
    assertThat(typed.code()).isZero();
    assertThat(typed.out()).isEqualTo("Made of 2 studies: " + pack + "\n");
    assertThat(Files.readString(Path.of(pack))).contains("Teaching pack: 2 studies");
    refused("is there already", "report", arms, sweep, "--out", pack);
  }

  private static void refused(String message, String... words) {
    Typed typed = Typed.run(words);
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains(message);
  }
}
