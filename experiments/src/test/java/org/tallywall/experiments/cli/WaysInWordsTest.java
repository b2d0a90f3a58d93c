package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who the ways of playing are, and what was asked of them, as notes and page say it. */
class WaysInWordsTest {
  private static final String ARMS =
      """
      { "study": "arms", "card": "small.json", "seed": 5,
        "arms": { "plain": "reckoner",
                  "keep pairs": { "player": "reckoner", "passes.keep-pairs": true },
                  "two changes": { "player": "reckoner", "claims.jokers-shown-at-most": 1,
                                   "passes.blind-when-short": false },
                  "another": "watchful" },
        "baseline": "plain", "others": "nearest", "seats": 0, "primary": "points",
        "secondary": ["wall-games"], "deals": 30 }
      """;
  private static final String SWEEP =
      """
      { "study": "sweep", "card": "small.json", "seed": 5,
        "sweep": { "player": { "player": "reckoner", "defense": { "hold-back": true } },
                   "setting": "defense.hold-back.away-at-least", "values": [2, 3, 5],
                   "baseline": 3 },
        "others": "reckoner", "seats": 0, "primary": "points", "deals": 60 }
      """;

  private static final String NEVER_WINS =
      """
      { "study": "arms", "card": "small.json", "seed": 5,
        "arms": { "near": "nearest", "lot": "random-legal" },
        "baseline": "near", "others": "nearest", "primary": "points", "secondary": ["%s"],
        "deals": 60 }
      """;

  @TempDir Path folder;

  private Path out;

  @BeforeEach
  void card() {
    Cards.small(folder);
    out = folder.resolve("out");
  }

  private void run(String study, String format) {
    String file = Cards.write(folder, "study.json", study);
    assertThat(Typed.run("run", file, "--out", out.toString(), "--without-report").code()).isZero();
    assertThat(Typed.run("report", out.toString(), "--format", format).code()).isZero();
  }

  private String text(String file) throws IOException {
    return Files.readString(out.resolve(file));
  }

  @Test
  void arms_haveASentenceEach_andAllThatWasAskedHasARow() throws IOException {
    run(ARMS, "notes");
    String notes = text("notes.md");

    assertThat(notes.lines().filter(line -> line.startsWith("- ")))
        .containsExactly(
            "- “plain” is the player reckoner: judges its rack by the chance of each hand and what"
                + " it pays, and looks at nobody else unless you set it to.",
            "- “keep pairs” is a reckoner that, unlike “plain”, breaks up no pair in the passes while"
                + " it has another tile to pass.",
            "- “two changes” is a reckoner that, unlike “plain”, does not do this (with fewer than"
                + " three tiles to spare, passes the rest blind where that is allowed); shows at most 1"
                + " joker in one exposure (instead of 5).",
            "- “another” is the player watchful: judges its rack, reads the exposures of the others,"
                + " and defends step by step. It differs from “plain” in "
                + differing()
                + " settings, listed at the end of the report.");
    List<String> rows = notes.lines().filter(line -> line.startsWith("| ")).toList();
    assertThat(rows.stream().skip(2).map(WaysInWordsTest::twoCells))
        .containsExactly(
            "points per 100 games (the question), keep pairs",
            "points per 100 games (the question), two changes",
            "points per 100 games (the question), another",
            "wall games in 100 games, keep pairs",
            "wall games in 100 games, two changes",
            "wall games in 100 games, another");
  }

  /** Rows of the file for that way, without the one that says which player it is. */
  private long differing() throws IOException {
    return text("ways.csv").lines().filter(line -> line.startsWith("another,")).count() - 1;
  }

  private static String twoCells(String row) {
    String[] cells = row.split("\\|");
    return cells[1].trim() + ", " + cells[2].trim();
  }

  /** What was not asked is folded away under a heading that says so, and every change is listed. */
  @Test
  void page_foldsAwayWhatWasNotAsked_andListsTheSettings() throws IOException {
    run(ARMS, "page");
    String page = text("report.html");
    int besides = page.indexOf("Also measured, on the same deals");
    String before = page.substring(0, besides);

    assertThat(before.substring(before.lastIndexOf("<details")))
        .startsWith("<details id=")
        .doesNotContain(" open")
        .contains("Not asked before the run");
    assertThat(page.indexOf("Asked before the run, on the same deals"))
        .isPositive()
        .isLessThan(besides);
    assertThat(page.indexOf("How the ways of playing differ from “plain”")).isGreaterThan(besides);
  }

  /** The setting's own name stands in small print and in the sentence that explains it. */
  @Test
  void sweep_isToldInTheWordsOfItsSaying() throws IOException {
    run(SWEEP, "notes");
    String notes = text("notes.md");

    assertThat(notes)
        .contains(
            "“holds back when at least 2 tiles away”", "“holds back when at least 5 tiles away”")
        .contains("compared with “holds back when at least 3 tiles away”")
        .contains(
            "The ways of playing are reckoner with one setting (defense.hold-back.away-at-least) at"
                + " different values: a player that holds back when at least this many tiles away;"
                + " one tile nearer, it holds back less; one away, it plays on and keeps only what"
                + " ends the game on every line she can have.")
        .doesNotContain("“away at least");
  }

  /**
   * A player that never wins wins clearly less on discards; whether the chart says so by a number
   * hangs on whether that was asked.
   */
  @Test
  void chart_hasNumbersOnlyOfWhatWasAsked() throws IOException {
    String chart = "charts/where-games-go.svg";
    run(NEVER_WINS.formatted("exposures"), "charts");
    String unasked = text(chart);
    out = folder.resolve("asked");
    run(NEVER_WINS.formatted("won-on-discard"), "charts");

    assertThat(text("differences.csv")).contains("lot,near,won-on-discard,secondary");
    assertThat(text(chart)).contains("Below the bars: compared with", "\u2212");
    assertThat(unasked).doesNotContain("Below the bars", "\u2212");
  }
}
