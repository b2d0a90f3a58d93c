package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What notes, page and files say of a run that could stop early. */
@Tag("one-jdk")
class StopsEarlyTest {
  private static final String STUDY =
      """
      { "study": "until", "card": "small.json", "seed": 5,
        "arms": { "clumsy": "random-legal", "near": "nearest" }, "baseline": "clumsy",
        "others": "nearest", "primary": "win-rate", "secondary": ["wall-games"],
        "seats": 0, "until": { RULE, "at-most": 6000 } }
      """;

  @TempDir Path folder;

  private String notes(String rule) throws IOException {
    Cards.small(folder);
    String study = Cards.write(folder, "study.json", STUDY.replace("RULE", rule));
    Typed typed = Typed.run("run", study, "--out", folder.resolve("out").toString());
    assertThat(typed.code()).isZero();
    return Files.readString(folder.resolve("out/notes.md"));
  }

  private List<String> stopping() throws IOException {
    return Files.readAllLines(folder.resolve("out/stopping.csv"));
  }

  @Test
  void range_isToldWithRuleGoalAndTheDealsThatCount() throws IOException {
    String notes = notes("\"rule\": \"always-valid\", \"clear\": true");

    assertThat(stopping().get(1))
        .isEqualTo(
            "near,clumsy,win-rate,always-valid,clear,share of games,,,,6000,500,1,500,500,999,yes,");
    assertThat(notes)
        .contains("500 deals count (after 500 that only showed what to expect), 1,000 games in all")
        .contains("The deals that count are deals 500 to 999. Their number was not fixed")
        .contains(
            "stop once the range of the question (games won) left out 0, or after 6,000 deals")
        .contains("It looked once and stopped there.")
        .contains("Deals: 500, deals 500 to 999", "number of deals ended by a rule")
        .contains(
            "In 95 of 100 such runs, the range in parentheses holds the true number at every look")
        .doesNotContain("would catch nine times out of ten", "deals were played")
        .contains("Each comparison is taken by itself; they are not counted together.")
        .doesNotContain(
            "Holm", "all declared comparisons", "first is deal 0", "fixed before the run");
    assertThat(Files.readString(folder.resolve("out/report.html")))
        .contains("The deals that count are deals 500 to 999")
        .contains(
            "stopping.csv", "Each comparison is taken by itself; they are not counted together.")
        .doesNotContain("Holm", "the range in parentheses would hold");
  }

  @Test
  void sequentialTest_saysItsVerdictHypothesesAndChances() throws IOException {
    String notes = notes("\"rule\": \"sprt\", \"difference\": 0.05, \"false-alarm\": 0.04");

    assertThat(stopping().get(1))
        .startsWith("near,clumsy,win-rate,sprt,verdict,share of games,0.05")
        .endsWith(",6000,500,1,500,500,999,yes,more");
    assertThat(notes)
        .contains(
            "**On the same deals, “near” won more games in 100 than “clumsy”, by the sequential test;"
                + " the difference measured is ")
        .containsPattern(
            "is [0-9.]+ more games in 100 \\([0-9.]+ (more|fewer) to [0-9.]+ more\\)\\.\\*\\*")
        .contains("a difference of 5 games in 100 from none at all")
        .contains("claims one in at most 4 of 100 runs", "misses it in at most 10 of 100")
        .contains("once Wald’s sequential test had decided", "| yes, more, by the test |")
        .doesNotContain("Holm", "would catch nine times out of ten");
    assertThat(cell("win-rate", "detectable")).as("the test has a size of its own").isEmpty();
    assertThat(cell("wall-games", "detectable")).isNotEmpty();
  }

  private String cell(String measure, String column) throws IOException {
    List<String> lines = Files.readAllLines(folder.resolve("out/differences.csv"));
    int at = List.of(lines.get(0).split(",")).indexOf(column);
    return lines.stream()
        .map(line -> line.split(",", -1))
        .filter(cells -> cells[2].equals(measure))
        .findFirst()
        .orElseThrow()[at];
  }

  @Test
  void pilotThatLeavesNothing_isRefused() {
    Cards.small(folder);
    String rule = "\"rule\": \"sprt\", \"difference\": 0.05";
    String study = Cards.write(folder, "study.json", STUDY.replace("RULE", rule));
    Typed typed = Typed.run("run", study, "--deals", "500", "--out", folder.toString());

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err())
        .isEqualTo(
            "tallywall: --deals 500 is too few: this study uses its first 500 deals to learn what to"
                + " expect, and counts those that follow. Write --deals 501 or more.\n");
    String out = folder.resolve("o").toString();
    String[] least = {"run", study, "--deals", "501", "--out", out, "--without-report"};
    assertThat(Typed.run(least).code()).isZero();
  }
}
