package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.reports.words.Wording;

/** Studies of all designs from the command line: their files, and what a person reads. */
class RunDesignsTest {
  private static final String ARMS =
      """
      { "study": "arms", "question": "Does it help to hold back?", "card": "small.json", "seed": 5,
        "arms": { "never": "reckoner",
                  "hold-back": { "player": "reckoner", "defense": { "hold-back": true } } },
        "baseline": "never", "others": "reckoner", "primary": "points",
        "secondary": ["win-rate"], "deals": 60, "records": 2 }
      """;
  private static final String SWEEP =
      """
      { "study": "sweep", "card": "small.json", "seed": 5,
        "sweep": { "player": "reckoner", "setting": "aim.targets", "values": [1, 2, 4],
                   "baseline": 4 },
        "others": "nearest", "seats": 1, "primary": "win-rate", "deals": 60 }
      """;
  private static final String ROUND =
      """
      { "study": "round", "card": "small.json", "seed": 5, "deals": 50, "records": 1,
        "round-robin": { "a": "reckoner", "b": "nearest", "c": "watchful", "d": "random-legal" } }
      """;
  private static final String BRANCH =
      """
      { "study": "branch", "card": "small.json", "seed": 5, "deals": 60, "records": 1,
        "branch": { "at": "discard", "when": { "exposures-on-one-rack": [1, 2], "wall": [90, 60] },
                    "options": ["own-need", "safest"], "player": "watchful" },
        "primary": "points" }
      """;
  private static final String UNTIL =
      """
      { "study": "until", "card": "small.json", "seed": 5,
        "arms": { "clumsy": "random-legal", "nearest": "nearest" }, "baseline": "clumsy",
        "others": "nearest", "primary": "win-rate",
        "seats": 0, "until": { "rule": "always-valid", "clear": true, "at-most": 6000 } }
      """;

  @TempDir Path folder;

  private Path out;

  @BeforeEach
  void card() {
    Cards.small(folder);
    out = folder.resolve("out");
  }

  private Typed run(String study, String... more) {
    String file = Cards.write(folder, "study.json", study);
    String[] words = new String[4 + more.length];
    List<String> first = List.of("run", file, "--out", out.toString());
    for (int at = 0; at < words.length; at++) {
      words[at] = at < 4 ? first.get(at) : more[at - 4];
    }
    return Typed.run(words);
  }

  private List<String> lines(String file) throws IOException {
    return Files.readAllLines(out.resolve(file));
  }

  @Test
  void arms_run_answersInWordsAndNumbers() throws IOException {
    Typed typed = run(ARMS);

    assertThat(typed.code()).isZero();
    saysWhatTheNotesSay(typed);
    assertThat(typed.out())
        .startsWith("Does it help to hold back?\n")
        .contains("60 deals were played, 300 games in all")
        .contains("hold-back", "never", "per 100 games", "programmed players", "compared")
        .doesNotContain("significant", "proves", "p =", "baseline");
    assertThat(lines("differences.csv").get(1))
        .startsWith("hold-back,never,points,primary,per game,");
    assertThat(lines("differences.csv").get(2)).contains(",win-rate,secondary,");
    assertThat(lines("differences.csv").get(3)).contains(",exploratory,").contains(",,,");
    assertThat(lines("win-rates.csv")).hasSize(1 + 2 * 5);
    assertThat(lines("defense.csv").get(0)).startsWith("arm,baseline,step,seat-games,games,");
    assertThat(lines("columns.md")).anyMatch(line -> line.contains("p-holm"));
  }

  @Test
  void arms_anyNumberOfThreads_giveTheSameBytes() throws IOException {
    String quick =
        ARMS.replace("\"reckoner\"", "\"nearest\"")
            .replaceAll("\\{ \"player.*", "\"random-legal\" },");
    Typed typed = run(quick, "--threads", "1", "--deals", "520", "--without-report");
    assertThat(typed.code()).isZero();
    List<String> alone = lines("differences.csv");
    out = folder.resolve("again");
    run(quick, "--threads", "5", "--deals", "520", "--without-report");

    assertThat(lines("differences.csv")).isEqualTo(alone);
    assertThat(alone.get(1)).startsWith("hold-back,never,points,primary,");
  }

  @Test
  void arms_keptRecord_isTheGameThatTheCommandShows() throws IOException {
    run(ARMS);
    Path record = folder.resolve("game.jsonl");
    Typed typed =
        Typed.run(
            "game",
            "--study",
            folder.resolve("study.json").toString(),
            "--deal",
            "1",
            "--arm",
            "hold-back",
            "--seat",
            "2",
            "--record",
            record.toString());
    assertThat(typed.code()).isZero();
    String shown = Files.readString(record);
    String events = shown.substring(shown.indexOf("\"wall\""));
    String kept;
    try (InputStream packed =
        new GZIPInputStream(Files.newInputStream(out.resolve("records.jsonl.gz")))) {
      kept = new String(packed.readAllBytes(), StandardCharsets.UTF_8);
    }

    List<String> same =
        kept.lines()
            .filter(line -> line.contains("\"game\":8,"))
            .filter(line -> line.contains(events.strip()))
            .map(line -> line.substring(line.indexOf("\"game\""), line.indexOf(",\"card\"")))
            .toList();
    assertThat(same).containsExactly("\"game\":8,\"deal\":1,\"arm\":\"hold-back\",\"seat\":2");
  }

  @Test
  @Tag("long")
  void sweep_run_hasARowForEachValue() throws IOException {
    Typed typed = run(SWEEP);

    assertThat(typed.code()).isZero();
    saysWhatTheNotesSay(typed);
    assertThat(lines("sweep.csv")).hasSize(4);
    assertThat(lines("sweep.csv").get(3)).startsWith("aim.targets,4,yes,60,");
    assertThat(lines("differences.csv").get(1)).contains(",Newcombe paired,");
  }

  @Test
  void roundRobin_run_rounds_andRatesEverybody() throws IOException {
    Typed typed = run(ROUND);

    assertThat(typed.code()).isZero();
    saysWhatTheNotesSay(typed);
    assertThat(typed.out()).contains("54 deals were played, 216 games in all");
    assertThat(lines("ratings.csv")).hasSize(5);
    assertThat(lines("ratings.csv").get(4)).startsWith("d,random-legal,54,216,");
  }

  @Test
  @Tag("long")
  void branch_run_hasARowForEachSquare() throws IOException {
    Typed typed = run(BRANCH);

    assertThat(typed.code()).isZero();
    saysWhatTheNotesSay(typed);
    assertThat(lines("branch.csv")).hasSize(1 + 4);
    assertThat(lines("branch.csv").get(1)).startsWith("1,90,safest,own-need,240,");
  }

  @Test
  void branch_playerThatKnowsNoSafeTile_isRefused() {
    Typed typed = run(BRANCH.replace("\"watchful\"", "\"nearest\""));

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("knows no safe tiles");
  }

  @Test
  void until_clear_stopsEarly_andShowsNoIntervalOfAFixedNumber() throws IOException {
    Typed typed = run(UNTIL);

    assertThat(typed.code()).isZero();
    saysWhatTheNotesSay(typed);
    assertThat(typed.out().replaceAll("\\s+", " "))
        .contains("deals 500 to 999", "only showed what to expect");
    assertThat(lines("differences.csv").get(1)).contains(",always-valid empirical Bernstein,,,");
    assertThat(String.join("\\n", lines("win-rates.csv"))).doesNotContain("t over deals", "Wilson");
  }

  /** The console's answer and caution are those of the notes, word for word. */
  private void saysWhatTheNotesSay(Typed typed) throws IOException {
    String out = typed.out().replaceAll("\\s+", " ");
    List<String> notes = lines("notes.md");
    String headline =
        notes.stream().filter(line -> line.startsWith("**")).findFirst().orElseThrow();
    assertThat(out).contains(headline.replace("**", "").replaceAll("\\\\(.)", "$1"));
    assertThat(out).contains(Wording.CAUTION);
  }
}
