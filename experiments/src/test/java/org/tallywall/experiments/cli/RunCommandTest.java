package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Running a study from the command line, and what it leaves on the disk. */
class RunCommandTest {
  private static final String STUDY =
      """
      { "study": "harbour-look", "card": "small.json", "seed": 5,
        "table": ["nearest", "nearest", "random-legal", "nearest"],
        "deals": 1100, "records": 30 }
      """;

  /** The study as it stands, run once for all who only look at it. */
  @TempDir static Path played;

  private static Typed run;

  @TempDir Path folder;

  private String study;
  private String out;

  @BeforeAll
  static void run() {
    Cards.small(played);
    String asItStands = Cards.write(played, "study.json", STUDY);
    run = Typed.run("run", asItStands, "--out", played.resolve("out").toString());
  }

  @BeforeEach
  void write() {
    Cards.small(folder);
    study = Cards.write(folder, "study.json", STUDY);
    out = folder.resolve("out").toString();
  }

  @Test
  void run_study_fillsItsFolderAndPrintsAShortTable() throws IOException {
    String out = played.resolve("out").toString();

    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("harbour-look\n\nOf 100 wins, 76.8 came with Ladders")
        .contains("What you aim at, what wins", "Of 100 games, 53.3 were won")
        .contains("1,100 deals were played", "95 of 100 such runs", "Everything is in " + out)
        .doesNotContain("hypothes", "arm");
    assertThat(files(Path.of(out)).keySet().stream().filter(name -> !name.startsWith("games/")))
        .containsExactlyInAnyOrder(
            "study.json",
            "manifest.json",
            "win-rates.csv",
            "hand-choice.csv",
            "families.csv",
            "endings.csv",
            "passes.csv",
            "overall.csv",
            "rules.csv",
            "columns.md",
            "records.jsonl.gz",
            "notes.md",
            "notes.html",
            "report.html",
            "charts/where-games-go.svg",
            "charts/where-games-go.png",
            "charts/aim-and-win.svg",
            "charts/aim-and-win.png",
            "charts/aim-and-win-lines.svg",
            "charts/aim-and-win-lines.png",
            "charts/when-games-end.svg",
            "charts/when-games-end.png",
            "charts/what-the-passes-bring.svg",
            "charts/what-the-passes-bring.png");
    assertThat(Path.of(out, "games"))
        .isDirectoryContaining("glob:**/game-0.html")
        .isDirectoryContaining("glob:**/game-19.html")
        .isDirectoryNotContaining("glob:**/game-20.html");
    assertThat(Files.readString(Path.of(out, "manifest.json")))
        .contains("\"deals\" : 1100", "\"card\" : \"Little Harbour test card\"", "stream-version")
        .doesNotContain("derived");
  }

  @Test
  void run_everyTable_isExplainedColumnByColumn() throws IOException {
    Path out = played.resolve("out");
    String page = Files.readString(out.resolve("columns.md"));
    for (String name : List.of("win-rates", "hand-choice", "families", "endings", "passes")) {
      String header = Files.readString(out.resolve(name + ".csv")).lines().findFirst().get();
      String section = page.substring(page.indexOf("## " + name + ".csv"));
      for (String column : header.split(",")) {
        assertThat(section).as(name).contains("| " + column + " |");
      }
    }
  }

  /** One thread, two and seven give the same bytes in every file but the manifest. */
  @Test
  void run_oneTwoOrSevenThreads_giveTheSameBytes() throws IOException {
    List<Map<String, String>> runs = new ArrayList<>();
    for (String threads : List.of("1", "2", "7")) {
      String out = folder.resolve("by " + threads).toString();
      Typed typed = Typed.run("run", study, "--out", out, "--threads", threads);
      assertThat(typed.code()).isZero();
      Map<String, String> files = files(Path.of(out));
      files.remove("manifest.json");
      runs.add(files);
    }

    assertThat(runs.get(1)).isEqualTo(runs.get(0));
    assertThat(runs.get(2)).isEqualTo(runs.get(0));
  }

  @Test
  void run_resultsThere_isRefusedUnlessToldToReplaceThem() throws IOException {
    copy(played.resolve("out"), Path.of(out));
    String before = Files.readString(Path.of(out, "manifest.json"));

    Typed refused = Typed.run("run", study, "--out", out);
    Typed misspelt = Typed.run("run", study, "--out", out, "--on-existing", "overwrit");

    assertComplains(refused, "is there already");
    assertComplains(misspelt, "did you mean \"overwrite\"?");
    assertThat(Files.readString(Path.of(out, "manifest.json"))).isEqualTo(before);
  }

  @Test
  void run_otherCardRulesSeedAndDeals_areADerivedStudy() throws IOException {
    String card =
        Cards.write(folder, "mine.csv", "family;tiles;value\nPier;NNNN EEE WWWW RRR;25\n");
    String rules = Cards.write(folder, "mine-rules.json", "{ \"wall.cold\": \"NO_CLAIM\" }");

    Typed typed =
        Typed.run(
            "run", study, "--out", out, "--card", card, "--rules", rules, "--seed", "9", "--deals",
            "40");

    assertThat(typed.code()).isZero();
    assertThat(Files.readString(Path.of(out, "manifest.json")))
        .contains("\"derived\"", "mine.csv", "mine-rules.json", "\"seed\" : 9", "\"deals\" : 40");
    assertThat(Files.readString(Path.of(out, "study.json")))
        .contains("\"wall.cold\" : \"NO_CLAIM\"", "\"card\" : \"../mine.csv\"");
    assertThat(Files.readString(Path.of(out, "hand-choice.csv"))).contains("table,P1,Pier,");
  }

  @Test
  void run_studyOfTheResults_playsTheSameAgain() throws IOException {
    Typed.run("run", study, "--out", out, "--deals", "60", "--without-report");
    String again = folder.resolve("again").toString();

    Typed typed = Typed.run("run", out + "/study.json", "--out", again, "--without-report");

    assertThat(typed.code()).isZero();
    for (String name : List.of("win-rates.csv", "hand-choice.csv", "passes.csv", "endings.csv")) {
      assertThat(Path.of(again, name)).hasSameTextualContentAs(Path.of(out, name));
    }
  }

  @Test
  void run_wrongInput_isExplainedAndLeavesNothing() throws IOException {
    String faulty =
        Cards.write(folder, "faulty.json", STUDY.replace("random-legal", "random-leagl"));

    assertComplains(Typed.run("run", faulty, "--out", out), "random-legal");
    assertComplains(Typed.run("run", "none.json", "--out", out), "there is no such file");
    assertComplains(Typed.run("run", study, "--card", "none.json"), "there is no such file");
    assertComplains(Typed.run("run", study, "--deals", "0"), "--deals is 1 to");
    assertComplains(Typed.run("run", study, "--deals", "many"), "not a whole number");
    assertComplains(Typed.run("run", study, "--seed", "-1"), "not a whole number");
    assertComplains(Typed.run("run", study, "--threads", "0"), "--threads is 1 to");
    assertComplains(Typed.run("run", study, "--out", study), "is a file");
    assertThat(Path.of(out)).doesNotExist();
  }

  private static void assertComplains(Typed typed, String words) {
    assertThat(typed.err()).contains(words).doesNotContain("Exception", "java.");
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
  }

  /** Copies a folder with all that is in it. */
  static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path one : all.toList()) {
        Path place = to.resolve(from.relativize(one));
        if (Files.isDirectory(one)) {
          Files.createDirectories(place);
        } else {
          Files.copy(one, place);
        }
      }
    }
  }

  /** All files of a folder and its folders as text, packed ones unpacked; not the blocks. */
  static Map<String, String> files(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String name = folder.relativize(file).toString().replace('\\', '/');
        if (name.startsWith("blocks/")) {
          continue;
        }
        if (name.endsWith(".gz")) {
          try (GZIPInputStream in = new GZIPInputStream(Files.newInputStream(file))) {
            files.put(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
          }
        } else {
          files.put(name, Files.readString(file, StandardCharsets.ISO_8859_1));
        }
      }
    }
    return files;
  }
}
