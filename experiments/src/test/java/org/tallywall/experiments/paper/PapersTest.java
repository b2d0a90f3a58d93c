package org.tallywall.experiments.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.reports.words.Wording;

/** What stands in the papers of invented results. */
class PapersTest {
  private static final PaperOptions ALL = PaperOptions.everything(SampleResults.VERSION);

  @TempDir private Path folder;

  @Test
  void notes_ofTwoWaysOfPlaying_answerFirstWithRangeAndCaution() throws IOException {
    String notes = notes(SampleResults.arms(folder));

    assertThat(notes.lines().limit(8))
        .contains(
            "# Does holding back help once somebody shows two exposures?",
            "**“hold-back” won clearly more games than “never”; “too-late” and “never” are too close to"
                + " call on games won.**",
            "On the same deals, “hold-back” won about 1.01 more games in 100 than “never” (0.40 to"
                + " 1.62 more).[^1]");
    assertThat(notes)
        .contains("from “never” winning 0.31 more to “too-late” winning 0.52 more games in 100")
        .contains(Wording.CAUTION)
        .contains("The number was fixed before the run.")
        .contains("sha256:11", "sha256:22", "sha256:33", "seed 7")
        .contains("(Holm) 0.0022", "this run is as precise as one 3.4 times as long")
        .contains("](<charts/differences.png>)");
  }

  /** Statistical names stand in footnotes and notes below tables, not in the sentences. */
  @Test
  void notes_ofAnyKind_keepStatisticalNamesToFootnotes() throws IOException {
    for (Path one :
        List.of(
            SampleResults.arms(folder.resolve("a")),
            SampleResults.sweep(folder.resolve("s")),
            SampleResults.branch(folder.resolve("b")))) {
      String[] parts = notes(one).split("\n\\[\\^1\\]:");
      assertThat(parts[0])
          .doesNotContainIgnoringCase("hypothes", "interval", "correlation", "significan", " arm ");
      assertThat(parts[0]).doesNotContain("proves", "optimal", "no difference", "percent");
    }
  }

  @Test
  void notes_ofASetting_nameItsValues() throws IOException {
    assertThat(notes(SampleResults.sweep(folder)))
        .contains(
            "**“away at least 1”, “away at least 2”, and “away at least 5” all scored clearly fewer")
        .contains("; “away at least 4” and “away at least 3” are too close to call on points.**")
        .contains("in each of the four seats of every deal in turn, and “reckoner” in the other");
    assertThat(Files.readString(folder.resolve("charts/setting.svg"))).contains("the same as at 3");
  }

  /** The file has "safest less own-need"; a plus in the map means that own-need is better. */
  @Test
  void notes_ofSituations_turnTheFileRoundAndSayTheRule() throws IOException {
    assertThat(notes(SampleResults.branch(folder)))
        .contains(
            "**Playing your own hand instead of throwing the safest tile scored clearly more points in")
        .contains(
            "4 of 16 situations, clearly fewer in 6; 5 were too close to call; 1 came up in fewer")
        .contains("than 30 deals.**")
        .contains("Each game counts once, at its first decision that fits a situation")
        .contains("where both choices throw the same tile the difference is 0", "branch.csv")
        .contains("| 810 (610 to 1,010) | yes, more |", "Ranges are taken one by one")
        .contains("with 45 to 31 tiles left play your own hand up to 3 away, and throw")
        .contains("with 60 to 46, 30 to 16, 15 to 0 tiles left it is not clear");
    String page = Files.readString(folder.resolve("report.html"));
    assertThat(row(page, ">810 (610 to 1,010)<")).contains(">play your own hand<", "yes, more");
    assertThat(row(page, ">220 (20 to 420)<")).contains(">too close to call<");
    assertThat(Files.readString(folder.resolve("charts/which-choice.svg")))
        .contains("+810", "+610 to +1,010", "too few", "the rule to remember")
        .contains("60 to 46: 2 away +810 (+610 to +1,010)", "4 away too close to call");
  }

  @Test
  void chart_ofParts_labelsTheTwoThatChangedMost() throws IOException {
    notes(SampleResults.arms(folder));
    String svg = Files.readString(folder.resolve("charts/where-games-go.svg"));
    assertThat(svg).contains("−6.50 (−7.20 to −5.80)", "+5.02 (+4.31 to +5.73)");
  }

  /** Clear by itself (0.05 to 0.75), not among all that was declared (adjusted p 0.12). */
  @Test
  void difference_thatIsClearOnlyAlone_isNotCalledClear() throws IOException {
    notes(SampleResults.arms(folder));
    String page = Files.readString(folder.resolve("report.html"));
    assertThat(row(page, "0.40 (0.05 to 0.75)")).contains(">too close to call, allowing for ");
    assertThat(row(page, "5.02 (4.31 to 5.73)")).contains(">yes, more<");
    assertThat(row(page, "-6.50 (-7.20 to -5.80)")).contains(">yes, less<");
    assertThat(row(page, "-4.00 (-4.70 to -3.30)")).doesNotContain("yes");
  }

  /** 100 games: 20 won, 15 wall games, 5 void; 30 of 100 aim at Ladders, which win 60 of 80. */
  @Test
  void figures_ofASmallTable_areThoseWorkedOutByHand() throws IOException {
    String notes = notes(SampleResults.table(folder));
    assertThat(notes)
        .contains("Of 100 games, 80.0 were won (71.1 to 86.7); nobody won the rest")
        .contains("Of 100 wins, 75.0 came with Ladders (65.0 to 83.0) and 25.0 with Vanes")
        .contains("| Vanes | 70.0 (65.0 to 75.0) | 25.0 (17.0 to 35.0) | 3.4 (1.0 to 6.0) |");
    assertThat(Files.readString(folder.resolve("charts/aim-and-win.svg")))
        .contains("Ladders: aimed at by 30.0 of 100 players, 75.0 of 100 wins")
        .contains("Vanes: aimed at by 70.0 of 100 players, 25.0 of 100 wins")
        .contains("of 100 that aimed at it 25 won with it, 50 with any line")
        .contains("of 100 that aimed at it 3.4 won with it, 10 with any line");
    String page = Files.readString(folder.resolve("report.html"));
    assertThat(page.indexOf("won with it, of 100 aiming at it"))
        .isPositive()
        .isLessThan(page.indexOf("won with any line, of 100 aiming at it"));
    assertThat(row(page, "25.0 (20.0 to 30.0)")).contains(">50 (40 to 60)<");
    assertThat(page).contains("Good racks lead to good lines");
    assertThat(row(page, "20.0 (13.3 to 28.9)")).contains(">25.0<", ">50 (-200 to 300)<");
    assertThat(row(page, ">31 to 31<")).contains("data-value=\"10\"");
    assertThat(row(page, ">16 to 30<")).contains("data-value=\"25\"");
    assertThat(row(page, ">1 to 15<")).contains("data-value=\"45\"", "data-value=\"20\"");
    assertThat(row(page, ">none<")).contains("data-value=\"20\"", "data-value=\"5\"");
    assertThat(page).doesNotContain("East complete before play");
    assertThat(Files.readString(folder.resolve("charts/where-games-go.svg")))
        .contains("self-picked 8.0, won on a discard 12.0, threw the winning tile 10.0")
        .contains("nobody won 20.0");
  }

  /** The row of a table in which a text stands. */
  private static String row(String page, String text) {
    int at = page.indexOf(text);
    return at < 0 ? "" : page.substring(page.lastIndexOf("<tr>", at), page.indexOf("</tr>", at));
  }

  @Test
  void names_thatBite_standAsTextInEveryFile() throws IOException {
    Papers.write(SampleResults.hostile(folder), ALL);
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = file.getFileName().toString();
        if (name.endsWith(".html") || name.endsWith(".svg")) {
          assertThat(Files.readString(file))
              .as(name)
              .doesNotContain("<script>document", "<img src=x")
              .contains("&lt;script&gt;");
        }
      }
    }
    assertThat(Files.readString(folder.resolve("notes.md")))
        .doesNotContainPattern("(?<!\\\\)<(script|img)");
  }

  @Test
  void papers_ofAnUnfinishedOrForeignRun_saySoOnTop() throws IOException {
    SampleResults.arms(folder);
    String manifest = Files.readString(folder.resolve("manifest.json"));
    SampleResults.write(
        folder,
        "manifest.json",
        manifest
            .replace("\"deals\": 20000", "\"deals\": 500")
            .replace("\"0.1.0\"", "\"0.0.9\"")
            .replace("\"faults\": 0", "\"faults\": 1, \"derived\": {\"card\": \"x.json\"}"));
    String notes = notes(folder);
    assertThat(notes.lines().skip(1).filter(line -> line.startsWith("> ")))
        .hasSize(4)
        .anyMatch(line -> line.contains("PROVISIONAL: 500 of 20,000"))
        .anyMatch(line -> line.contains("version 0.0.9"))
        .anyMatch(line -> line.contains("1 deal was set aside"));
    assertThat(notes.lines().skip(2).findFirst().orElseThrow()).startsWith("> PROVISIONAL: ");
    assertThat(Files.readString(folder.resolve("report.html")).indexOf("PROVISIONAL"))
        .isLessThan(Files.readString(folder.resolve("report.html")).indexOf("class=\"answer\""));
  }

  @Test
  void formats_asked_areMadeAndNoOthers() throws IOException {
    SampleResults.arms(folder);
    Papers.write(folder, new PaperOptions(Set.of(PaperFormat.NOTES), false, SampleResults.VERSION));
    assertThat(folder.resolve("notes.md")).exists();
    assertThat(folder.resolve("report.html")).doesNotExist();
    assertThat(folder.resolve("charts")).doesNotExist();
    assertThat(Files.readString(folder.resolve("notes.md")))
        .contains("More or less than “never”: games won in 100. Compared with never.")
        .doesNotContain("](<charts");
  }

  @Test
  void papers_madeTwice_areTheSameBytes() throws IOException {
    String first = notes(SampleResults.arms(folder));
    String page = Files.readString(folder.resolve("report.html"));
    assertThat(notes(folder)).isEqualTo(first);
    assertThat(Files.readString(folder.resolve("report.html"))).isEqualTo(page);
  }

  @Test
  void lines_ofTheCard_arePrintedOnRequestAloneAndOnlyOfTheCardPlayed() throws IOException {
    PaperOptions withCard = new PaperOptions(Set.of(PaperFormat.PAGE), true, SampleResults.VERSION);
    SampleResults.arms(folder);
    assertThatThrownBy(() -> Papers.write(folder, withCard))
        .isInstanceOf(WrongInputException.class)
        .hasMessageContaining("is not there any more");
    SampleResults.write(
        folder,
        "card.json",
        "{\"card\": \"Another\", \"families\": [{\"family\": \"F\", \"lines\":"
            + " [{\"tiles\": \"NNNN EEEE WWWW SS\", \"value\": 25}]}]}");
    assertThatThrownBy(() -> Papers.write(folder, withCard))
        .hasMessageContaining("is not the one that was played");
  }

  @Test
  void pack_ofSeveralStudies_holdsTheirAnswersAndContents() throws IOException {
    Path arms = SampleResults.arms(folder.resolve("a"));
    Path branch = SampleResults.branch(folder.resolve("b"));
    Path page = folder.resolve("pack.html");
    TeachingPack.write(List.of(arms, branch), page, SampleResults.VERSION);

    assertThat(Files.readString(page))
        .contains("<h1>Teaching pack: 2 studies</h1>", "<nav aria-label=\"Contents\">")
        .contains("<h2>Does holding back help once somebody shows two exposures?</h2>")
        .contains("<h2>Two exposures are seen: play on or hold back?</h2>");
    assertThatThrownBy(() -> TeachingPack.write(List.of(arms, branch), page, SampleResults.VERSION))
        .isInstanceOf(WrongInputException.class)
        .hasMessageContaining("is there already");
  }

  /** The plain fragment shows the same numbers as the notes. */
  @Test
  void fragment_ofNotes_holdsTheSameNumbers() throws IOException {
    notes(SampleResults.arms(folder));
    String fragment = Files.readString(folder.resolve("notes.html"));
    assertThat(fragment)
        .contains("1.01 (0.40 to 1.62)", "0.11 (-0.31 to 0.52)", "<table border=\"1\"")
        .contains("src=\"charts/differences.png\"")
        .doesNotContain("<style", "<script", "class=");
    assertThat(fragment.chars().allMatch(letter -> letter < 127)).isTrue();
  }

  private static String notes(Path folder) throws IOException {
    assertThat(Papers.write(folder, ALL)).isEmpty();
    return Files.readString(folder.resolve("notes.md"));
  }
}
