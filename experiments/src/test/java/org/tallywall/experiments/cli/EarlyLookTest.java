package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;

/** A run that is looked at before its end, and one whose number of deals is changed. */
@Tag("long")
class EarlyLookTest {
  private static final String STUDY =
      """
      { "study": "look", "card": "small.json", "seed": 5, "deals": 2500,
        "arms": { "near": { "player": "nearest" }, "lot": { "player": "random-legal" } },
        "baseline": "lot", "others": { "player": "random-legal" }, "seats": 0,
        "primary": "win-rate", "secondary": ["points"], "records": 2 }
      """;

  @TempDir private static Path once;

  @TempDir private Path folder;

  private String study;
  private Path whole;
  private Path cut;

  @BeforeAll
  static void play() {
    Cards.small(once);
    String played = Cards.write(once, "look.json", STUDY);
    run("run", played, "--out", once.resolve("whole").toString(), "--without-report");
  }

  /** A whole run, and what a power cut would have left of it: blocks 0, 1, 2 and 4. */
  @BeforeEach
  void copy() throws IOException {
    Cards.small(folder);
    study = Cards.write(folder, "look.json", STUDY);
    whole = folder.resolve("whole");
    cut = folder.resolve("cut");
    Files.createDirectories(whole.resolve("blocks"));
    Files.createDirectories(cut.resolve("blocks"));
    for (String name : files(once.resolve("whole")).keySet()) {
      Files.copy(once.resolve("whole").resolve(name), whole.resolve(name));
      boolean first = name.startsWith("blocks/") && !name.contains("3.block");
      if (first || name.equals("study.json")) {
        Files.copy(whole.resolve(name), cut.resolve(name));
      }
    }
    String manifest = Files.readString(once.resolve("whole/manifest.json"));
    Files.writeString(whole.resolve("manifest.json"), manifest);
    Files.writeString(
        cut.resolve("manifest.json"),
        manifest
            .replace("\"complete\"", "\"running\"")
            .replaceAll("(?s),\\s*\"files\" : \\[.*?\\]", ""));
  }

  private static Typed run(String... words) {
    Typed typed = Typed.run(words);
    assertThat(typed.code()).as(typed.err()).isZero();
    return typed;
  }

  private static void refused(String message, String... words) {
    Typed typed = Typed.run(words);
    assertThat(typed.code()).as(typed.out()).isEqualTo(2);
    assertThat(typed.err()).contains(message);
  }

  /** All files below a folder, but for what may differ from run to run. */
  private static Map<String, String> files(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String name = folder.relativize(file).toString();
        if (!name.equals("manifest.json")) {
          files.put(name, new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
        }
      }
    }
    return files;
  }

  private static List<String> cells(Path folder, String file, String arm, String... columns) {
    String name = file.substring(0, file.indexOf('.'));
    CsvFile.Row row =
        ResultsFolder.read(folder, new ThisProgram("any", 1)).rows(name).stream()
            .filter(one -> one.text("arm").equals(arm))
            .findFirst()
            .orElseThrow();
    return Stream.of(columns).map(row::text).toList();
  }

  @Test
  void report_ofAnUnfinishedRun_countsTheFirstBlocksAndTouchesNothingElse() throws IOException {
    Map<String, String> before = files(cut);
    String manifest = Files.readString(cut.resolve("manifest.json"));

    Typed typed = run("report", cut.toString());

    assertThat(typed.out())
        .contains(
            "Made in " + cut.resolve("provisional") + ": notes.md, notes.html, report.html, charts",
            "PROVISIONAL: 1,500 of 2,500 deals; the run itself is as it was");
    Map<String, String> after = files(cut);
    after.keySet().removeIf(name -> name.startsWith("provisional"));
    assertThat(after).isEqualTo(before);
    assertThat(cut.resolve("manifest.json")).hasContent(manifest);

    Path early = cut.resolve("provisional");
    assertThat(Files.readString(early.resolve("notes.md")))
        .contains("PROVISIONAL: 1,500 of 2,500 deals", "Its ranges allow for looking at any time");
    try (Stream<Path> charts = Files.list(early.resolve("charts"))) {
      assertThat(charts.filter(chart -> chart.toString().endsWith(".svg")))
          .isNotEmpty()
          .allSatisfy(
              chart -> assertThat(Files.readString(chart)).contains("PROVISIONAL: 1,500 of 2,500"));
    }
  }

  /** The same counts as a run of so many deals, and ranges that are wider. */
  @Test
  void figuresOfAnUnfinishedRun_areThoseOfItsFirstDeals() throws IOException {
    Path fixed = folder.resolve("fixed");
    run("run", study, "--deals", "1500", "--out", fixed.toString(), "--without-report");
    run("report", cut.toString(), "--format", "notes");
    Path early = cut.resolve("provisional");

    String[] counts = {"deals", "games", "wins", "win-rate", "points", "wall-game", "exposures"};
    assertThat(cells(early, "win-rates.csv", "near", counts))
        .isEqualTo(cells(fixed, "win-rates.csv", "near", counts));
    assertWider(early, fixed, "win-rates.csv", "win-rate");
    assertWider(early, fixed, "differences.csv", "difference");
    assertThat(cells(early, "differences.csv", "near", "method").get(0))
        .endsWith(", at a level that holds at every look");
    double p = Double.parseDouble(cells(early, "differences.csv", "near", "p").get(0));
    double fixedP = Double.parseDouble(cells(fixed, "differences.csv", "near", "p").get(0));
    assertThat(p).isGreaterThan(fixedP);
    assertThat(Files.readAllBytes(early.resolve("records.jsonl.gz"))).isNotEmpty();
  }

  private static void assertWider(Path early, Path fixed, String file, String column)
      throws IOException {
    String[] limits = {column + "-low", column + "-high"};
    List<Double> one = numbers(cells(early, file, "near", limits));
    List<Double> other = numbers(cells(fixed, file, "near", limits));
    double ratio = (one.get(1) - one.get(0)) / (other.get(1) - other.get(0));
    assertThat(ratio).isBetween(1.5, 1.8);
  }

  private static List<Double> numbers(List<String> cells) {
    return cells.stream().map(Double::parseDouble).toList();
  }

  @Test
  void resumedAfterALook_givesTheSameBytesAndTakesTheEarlyFiguresAway() throws IOException {
    run("report", cut.toString());

    run("run", study, "--out", cut.toString(), "--on-existing", "resume", "--without-report");

    assertThat(files(cut)).isEqualTo(files(whole));
    assertThat(cut.resolve("provisional")).doesNotExist();
  }

  /** Notes that somebody has worked on stay, and are told of. */
  @Test
  void earlyNotesThatWereWorkedOn_stay() throws IOException {
    run("report", cut.toString(), "--format", "notes");
    Files.writeString(cut.resolve("provisional/notes.md"), "My own words.");

    Typed typed = run("run", study, "--out", cut.toString(), "--on-existing", "resume");

    assertThat(typed.err()).contains("in provisional: \"notes.md\" was changed");
    assertThat(cut.resolve("provisional/notes.edited-1.md")).hasContent("My own words.");
    assertThat(cut.resolve("provisional/manifest.json")).doesNotExist();
  }

  @Test
  void report_ofTooFewDeals_isRefused() throws IOException {
    Files.delete(cut.resolve("blocks/0000001.block"));
    refused(
        "its first blocks hold 500 deals so far; from 1,000 on it can be looked at",
        "report",
        cut.toString());
    Files.delete(cut.resolve("blocks/0000000.block"));
    refused("no block of deals is finished yet", "report", cut.toString());
    assertThat(cut.resolve("provisional")).doesNotExist();
  }

  /** A damaged block ends the run of first blocks; it is no fault of the look. */
  @Test
  void report_withADamagedBlock_countsWhatStandsBeforeIt() throws IOException {
    Files.write(cut.resolve("blocks/0000002.block"), new byte[] {1, 2, 3});

    assertThat(run("report", cut.toString(), "--format", "notes").out())
        .contains("PROVISIONAL: 1,000 of 2,500 deals");
  }

  @Test
  void runCutDownAfterwards_saysSoAndHasRangesThatAllowForIt() throws IOException {
    run("report", cut.toString(), "--format", "notes");
    Path early = folder.resolve("early");
    Files.createDirectories(early);
    for (String name : List.of("win-rates.csv", "differences.csv", "endings.csv")) {
      Files.copy(cut.resolve("provisional").resolve(name), early.resolve(name));
    }

    Typed typed =
        run("run", study, "--deals", "1500", "--out", cut.toString(), "--on-existing", "resume");

    assertThat(typed.out())
        .contains("changed after the run had begun: 2,500 were planned, 1,500 are counted")
        .doesNotContain("PROVISIONAL");
    for (String name : List.of("win-rates.csv", "differences.csv", "endings.csv")) {
      assertThat(cut.resolve(name)).hasSameTextualContentAs(early.resolve(name));
    }
    assertThat(Files.readString(cut.resolve("study.json")))
        .contains("\"deals\" : 1500", "\"first-planned\" : 2500");
    assertThat(Files.readString(cut.resolve("notes.md")))
        .contains("The number was changed after the run had begun")
        .doesNotContain("The number was fixed", "PROVISIONAL");
    assertThat(run("verify", cut.toString(), "--blocks", "9").out())
        .contains("3 of 3 blocks played again are the same");
    assertThat(run("run", study, "--out", cut.toString(), "--on-existing", "resume").out())
        .contains("is complete; nothing was played");
  }

  /** Going back to the first number plays the rest; but by then the answer had been looked at. */
  @Test
  void runMadeLongerAfterwards_countsAllAndStillAllowsForIt() throws IOException {
    String out = cut.toString();
    run("run", study, "--deals", "1500", "--out", out, "--on-existing", "resume");

    run("run", study, "--deals", "2500", "--out", out, "--on-existing", "resume");

    String[] counts = {"deals", "wins", "points"};
    assertThat(cells(cut, "win-rates.csv", "near", counts))
        .isEqualTo(cells(whole, "win-rates.csv", "near", counts));
    assertWider(cut, whole, "differences.csv", "difference");
    assertThat(Files.readString(cut.resolve("notes.md")))
        .contains("2,500 were planned, 2,500 are counted");

    Path longer = whole;
    run("run", study, "--deals", "3000", "--out", longer.toString(), "--on-existing", "resume");
    assertThat(cells(longer, "win-rates.csv", "near", "deals")).containsExactly("3000");
    assertThat(Files.readString(longer.resolve("notes.md")))
        .contains("2,500 were planned, 3,000 are counted");
  }

  @Test
  void numbersThatCannotBeChangedTo_areRefused() {
    String[] words = {"run", study, "--out", cut.toString(), "--on-existing", "resume", "--deals"};
    refused("write --deals 1000 or 1500", with(words, "1200"));
    refused("can be changed to 1,000 deals or more, not to 500", with(words, "500"));
    words[3] = whole.toString();
    refused("is complete with 2,500 deals; it cannot be cut down to 1,500", with(words, "1500"));
  }

  private static String[] with(String[] words, String last) {
    return Stream.concat(Stream.of(words), Stream.of(last)).toArray(String[]::new);
  }
}
