package org.tallywall.reports.results;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;

/** Folders as a run leaves them, and as nobody wants to find them. */
class ResultsFolderTest {
  private static final ThisProgram VERSION = new ThisProgram("0.1.0", 1);
  private static final String MANIFEST =
      """
      { "tallywall": "0.1.0", "stream-version": 1, "study": "look", "card": "A card",
        "card-digest": "sha256:1", "seed": 7, "deals": 20, "games": 20, "faults": 0 }
      """;

  @TempDir private Path folder;

  @BeforeEach
  void fill() throws IOException {
    write("manifest.json", MANIFEST);
    write("study.json", "{ \"study\": \"look\", \"question\": \"Why?\", \"deals\": 20 }");
    write("some.csv", "arm,points,points-low,points-high\nA,1.5,0.25,2.75\nB,,,\n");
  }

  @Test
  void folder_ofAFinishedRun_isReadWithoutRemarks() {
    Results results = ResultsFolder.read(folder, VERSION);

    assertThat(results.remarks()).isEmpty();
    assertThat(results.question()).isEqualTo("Why?");
    assertThat(results.deals()).isEqualTo(20);
    assertThat(results.confidence()).isEqualTo(0.95);
    CsvFile.Row first = results.rows("some").get(0);
    assertThat(first.ranged("points")).contains(new Ranged(1.5, 0.25, 2.75));
    assertThat(results.rows("some").get(1).ranged("points")).isEmpty();
    assertThat(results.rows("some").get(1).number("points")).isEmpty();
    assertThat(results.sheet("other")).isEmpty();
    assertThatThrownBy(() -> first.text("no such column"))
        .isInstanceOf(WrongResultsException.class)
        .hasMessageContaining("line 1: the column \"no such column\" is missing");
    assertThatThrownBy(() -> first.ranged(Column.decimalInterval("wins", "games", "Games won.")))
        .hasMessageContaining("the column \"wins\" is missing");
  }

  /** What the program writes comes back as it was: every digit, quotes, commas, line breaks. */
  @Test
  void table_writtenAndReadBack_isTheSame() throws IOException {
    String awkward = "a \"name\", with\nall that <b>";
    double number = 0.1 + 0.2;
    Table table =
        Table.builder("back", "There and back")
            .columns(
                Column.text("arm", "A name."), Column.decimalInterval("points", "points", "P."))
            .row(Cell.text(awkward), Cell.interval(number, -1e-9, 1e12))
            .build();
    CsvWriter.write(table, folder.resolve("back.csv"));

    CsvFile.Row row = ResultsFolder.read(folder, VERSION).rows("back").get(0);
    assertThat(row.text("arm")).isEqualTo(awkward);
    assertThat(row.ranged("points")).contains(new Ranged(number, -1e-9, 1e12));
  }

  @Test
  void folder_ofAnotherVersion_saysSo() throws IOException {
    write("manifest.json", MANIFEST.replace("0.1.0", "9.9").replace(": 1,", ": 8,"));
    assertThat(ResultsFolder.read(folder, VERSION).remarks())
        .anyMatch(remark -> remark.contains("version 9.9"))
        .anyMatch(remark -> remark.contains("random streams of version 8"));
  }

  @Test
  void folder_withFewerDealsThanTheStudyWants_isProvisional() throws IOException {
    write("manifest.json", MANIFEST.replace("\"deals\": 20", "\"deals\": 5"));
    Provisional run = ResultsFolder.read(folder, VERSION).provisional().orElseThrow();
    assertThat(run.deals()).isEqualTo(5);
    assertThat(run.wanted()).hasValue(20);
    assertThat(run.atMost()).isFalse();
  }

  /** What the figures count is not how far the run is by now. */
  @Test
  void figures_ofARunThatWentOn_countWhatTheyCounted() throws IOException {
    write(
        "manifest.json",
        MANIFEST.replaceFirst(
            "\\{",
            "{ \"state\": \"running\","
                + " \"provisional\": { \"deals\": 12, \"games\": 48, \"faults\": 1 },"));
    Results results = ResultsFolder.read(folder, VERSION);
    assertThat(results.deals()).isEqualTo(12);
    assertThat(results.games()).hasValue(48);
    assertThat(results.remarks()).singleElement().asString().contains("1 deal was set aside");
  }

  @Test
  void folder_withFaults_saysHowMany() throws IOException {
    write("manifest.json", MANIFEST.replace("\"faults\": 0", "\"faults\": 2"));
    assertThat(ResultsFolder.read(folder, VERSION).remarks())
        .singleElement()
        .asString()
        .contains("2 deals were set aside");
  }

  @Test
  void folder_withoutAManifest_isAnUnfinishedRun() throws IOException {
    Files.delete(folder.resolve("manifest.json"));
    refused("was not finished");
    Files.delete(folder.resolve("study.json"));
    Files.createDirectory(folder.resolve("blocks"));
    refused("was not finished");
  }

  @Test
  void folder_ofARunThatWasStopped_saysHowFarItIs() throws IOException {
    Files.delete(folder.resolve("some.csv"));
    write(
        "manifest.json",
        MANIFEST.replace("\"deals\": 20", "\"state\": \"stopped\", \"deals\": 12"));
    refused("a run that is not complete (12 of 20 deals); go on with it by --on-existing resume");
  }

  @Test
  void folder_thatLostAFile_saysWhich() throws IOException {
    write(
        "manifest.json",
        MANIFEST.replace(
            "\"faults\": 0",
            "\"faults\": 0, \"state\": \"complete\", \"files\": [\"some.csv\", \"gone.csv\"]"));
    assertThat(ResultsFolder.read(folder, VERSION).remarks())
        .singleElement()
        .asString()
        .startsWith("The file gone.csv, which this run wrote, is missing");
  }

  @Test
  void folder_withoutResults_isNamedForWhatItIs() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    assertThatThrownBy(() -> ResultsFolder.read(empty, VERSION))
        .isInstanceOf(WrongResultsException.class)
        .hasMessageContaining("holds no results");
    assertThatThrownBy(() -> ResultsFolder.read(folder.resolve("nowhere"), VERSION))
        .hasMessageContaining("there is no folder");
    assertThatThrownBy(() -> ResultsFolder.read(folder.resolve("some.csv"), VERSION))
        .hasMessageContaining("is a file");
    Files.delete(folder.resolve("study.json"));
    refused("study.json is missing");
  }

  @Test
  void folder_withoutNumbers_isDamaged() throws IOException {
    Files.delete(folder.resolve("some.csv"));
    refused("holds no file of numbers");
  }

  @Test
  void run_thatIsNotComplete_isRefused() throws IOException {
    for (String state : List.of("running", "stopped")) {
      write("manifest.json", MANIFEST.replaceFirst("\\{", "{ \"state\": \"" + state + "\","));
      assertThatThrownBy(() -> ResultsFolder.read(folder, VERSION))
          .isInstanceOf(WrongResultsException.class)
          .hasMessageContaining("holds a run that is not complete")
          .hasMessageContaining("--on-existing resume");
    }
  }

  @Test
  void manifest_withoutTheCardsDigest_isRefused() throws IOException {
    write("manifest.json", MANIFEST.replace("\"card-digest\": \"sha256:1\",", ""));
    refused("has no field \"card-digest\"");
  }

  @Test
  void manifest_thatIsNoJson_isRefusedWithItsPlace() throws IOException {
    write("manifest.json", MANIFEST.substring(0, 60));
    assertThatThrownBy(() -> ResultsFolder.read(folder, VERSION))
        .isInstanceOf(WrongResultsException.class)
        .hasMessageContaining("manifest.json:");
    write("manifest.json", "[1, 2]");
    refused("an object in braces is expected");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a,b~1,2~3 | line 3: expected 2 cells, got 1",
        "a,b~1,2,3 | line 2: expected 2 cells, got 3",
        "a,a~1,2 | the column \"a\" stands twice",
        "a,b~\"1,2~3,4 | was it cut off",
      })
  void sheet_thatIsCutOrWrong_isRefusedWithItsPlace(String text, String message)
      throws IOException {
    write("some.csv", text.replace('~', '\n') + "\n");
    refused(message);
  }

  @Test
  void file_ofAPerson_isLeftAlone() throws IOException {
    write("Copy of some (2).csv", "a;b\n1;2,3\n");
    assertThat(ResultsFolder.read(folder, VERSION).sheets()).containsOnlyKeys("some");
  }

  @Test
  void sheet_thatIsEmpty_isRefused() throws IOException {
    write("some.csv", "");
    refused("is empty");
  }

  @ParameterizedTest
  @CsvSource({"NaN", "Infinity", "1e999", "half", "0x10", "1f"})
  void number_thatIsNone_isRefusedWhenAskedFor(String text) throws IOException {
    write("some.csv", "arm,points\nA," + text + "\n");
    CsvFile.Row row = ResultsFolder.read(folder, VERSION).rows("some").get(0);
    assertThatThrownBy(() -> row.number("points"))
        .isInstanceOf(WrongResultsException.class)
        .hasMessageContaining("line 2: column points: \"" + text + "\" is no number");
  }

  @Test
  void count_thatIsNone_isRefused() throws IOException {
    write("some.csv", "arm,games,need\nA,1.5,\nB,-3,\n");
    Results results = ResultsFolder.read(folder, VERSION);
    assertThatThrownBy(() -> results.rows("some").get(0).count("games"))
        .hasMessageContaining("1.5 is no count");
    assertThatThrownBy(() -> results.rows("some").get(1).count("games"))
        .hasMessageContaining("-3 is no count");
    assertThatThrownBy(() -> results.rows("some").get(1).need("need"))
        .hasMessageContaining("a number is missing");
  }

  @Test
  void range_withItsLimitsTheWrongWayRound_isRefused() throws IOException {
    write("some.csv", "x,x-low,x-high\n1,3,2\n");
    CsvFile.Row row = ResultsFolder.read(folder, VERSION).rows("some").get(0);
    assertThatThrownBy(() -> row.ranged("x")).hasMessageContaining("above x-high");
  }

  private void refused(String message) {
    assertThatThrownBy(() -> ResultsFolder.read(folder, VERSION))
        .isInstanceOf(WrongResultsException.class)
        .hasMessageContaining(message);
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }
}
