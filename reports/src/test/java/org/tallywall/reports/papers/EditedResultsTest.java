package org.tallywall.reports.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.reports.results.WrongResultsException;

/**
 * One cell of a real file of results edited by hand: it is said which one, what is wrong with it,
 * and what can be done.
 */
class EditedResultsTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "table | win-rates | wins | -3 | -3 is no count",
        "table | win-rates | wins | 1.5 | 1.5 is no count",
        "table | win-rates | wins | abc | \"abc\" is no number",
        "table | win-rates | wins | 4294967297 | column games: 60 cannot be",
        "table | win-rates | only-paid | 61 | column games: 60 cannot be",
        "table | win-rates | wins | 1e16 | 1e16 is out of range",
        "table | win-rates | win-rate | 1.01 | expected is a number from 0 to 1",
        "table | win-rates | win-rate | -0.01 | expected is a number from 0 to 1",
        "table | win-rates | win-rate-low | 0.999 | the limit is above win-rate-high",
        "table | win-rates | win-rate-high | '' | this end of the range is missing",
        "table | win-rates | win-rate | '' | the range stands at no number",
        "table | win-rates | points | 1e308 | 1e308 is out of range",
        "table | win-rates | points | NaN | \"NaN\" is no number",
        "table | win-rates | points | 1e999 | \"1e999\" is no number",
        "table | win-rates | player | '' | nothing stands there",
        "table | win-rates | seat | ' ' | nothing stands there",
        "table | families | family | '' | nothing stands there",
        "table | hand-choice | line | '' | nothing stands there",
        "table | hand-choice | concealed | maybe | expected \"yes\" or \"no\", got \"maybe\"",
        "table | hand-choice | points-when-won | -1e300 | is out of range",
        "table | families | aimed-and-won-with-it | 999 | cannot be: aimed-and-won-with-it come",
        "table | endings | wall | 4294967296 | a whole number from 0 to 1000",
        "table | endings | wall | '' | nothing stands there",
        "table | overall | unit | inches | expected \"share of games\" or \"tiles\"",
        "table | overall | value | 1.5 | 1.5 is out of range for a share of games",
        "table | passes | away-before | -1 | -1 is out of range",
        "arms | differences | role | main | got \"main\"",
        "arms | differences | p | 1.2 | 1.2 is out of range",
        "arms | differences | correlation | -2 | -2 is out of range",
        "arms | differences | discordant | 61 | column deals: 60 cannot be",
        "arms | differences | arm | '' | nothing stands there",
        "arms | defense | games | 999999 | column seat-games",
        "until | stopping | verdict | perhaps | got \"perhaps\"",
        "until | stopping | goal | '' | nothing stands there",
        "until | stopping | miss | 3 | 3 is out of range",
        "sweep | sweep | value | '' | nothing stands there",
        "sweep | sweep | compared-with | true | got \"true\"",
        "round-robin | ratings | rating | 1e6 | 1e6 is out of range",
        "round-robin | ratings | wins | 100000 | cannot be: wins come to 100000, which is more",
        "round-robin | rating-differences | other | '' | nothing stands there",
        "branch | branch | p-holm | -0.1 | -0.1 is out of range",
        "branch | branch | away | x | \"x\" is no number",
        "branch | branch | wall | '' | nothing stands there",
        "branch | branch | option | '' | nothing stands there",
      })
  void cell_thatCannotBe_isNamed(
      String design, String file, String column, String cell, String message) throws IOException {
    Map<String, String> files = RealResults.files(design);
    files.put(file + ".csv", edited(files.get(file + ".csv"), column, cell));
    refused(design, files, file + ".csv\", line 2: column ", message, "play the study again");
  }

  @ParameterizedTest
  @CsvSource({
    "table, win-rates, seat",
    "table, families, family",
    "table, hand-choice, line",
    "table, endings, wall",
    "table, passes, step",
    "table, rules, value",
    "arms, differences, baseline",
    "sweep, sweep, value",
    "round-robin, ratings, player",
    "round-robin, rating-differences, other",
    "branch, branch, away",
  })
  void column_thatPapersAskFor_isMissedByItsName(String design, String file, String second)
      throws IOException {
    Map<String, String> files = RealResults.files(design);
    files.compute(
        file + ".csv",
        (name, text) -> text.replaceFirst("^([^,]*)," + second + ",", "$1," + second + "-x,"));
    refused(
        design,
        files,
        file + ".csv\", line 1: the column \"" + second + "\" is missing",
        "play the study again");
  }

  /** Words that somebody took out are told as the name of the setting tells them. */
  @ParameterizedTest
  @CsvSource({"label, 1", "baseline-label, 2"})
  void wordsOfAValue_thatAreBlank_areMadeOfTheSettingsName(String column, String value)
      throws IOException {
    Map<String, String> files = RealResults.files("sweep");
    String ways = edited(files.get("ways.csv"), column, " ");
    files.put("ways.csv", ways.substring(0, ways.indexOf('\n', ways.indexOf('\n') + 1) + 1));
    assertThat(AllPapers.of(RealResults.write(folder, files)))
        .anyMatch(paper -> paper.contains("targets " + value));
  }

  @Test
  void end_withoutItsPartOfTheWall_isRefused() throws IOException {
    Map<String, String> files = RealResults.files("table");
    files.compute("overall.csv", (file, text) -> text.replaceFirst("(?m)^ended,[^,]*,", "ended,,"));
    refused("table", files, "overall.csv\", line ", "column part: nothing stands there");
  }

  @Test
  void branch_withoutARow_isRefused() throws IOException {
    Map<String, String> files = RealResults.files("branch");
    String text = files.get("branch.csv");
    files.put("branch.csv", text.substring(0, text.indexOf('\n') + 1));
    refused("branch", files, "branch.csv\" has no row of the measure \"points\"");
    files.put("branch.csv", text.replace(",points,", ",win-rate,"));
    refused("branch", files, "branch.csv\" has no row of the measure \"points\"");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "study.json | confidence | 1 | expected a number between 0 and 1, got 1",
        "study.json | confidence | 0 | expected a number between 0 and 1",
        "study.json | confidence | -0.5 | expected a number between 0 and 1",
        "study.json | confidence | \"0.95\" | expected a number between 0 and 1",
        "study.json | confidence | 0.99999999999999999999 | expected a number between 0 and 1",
        "study.json | confidence | null | expected a number between 0 and 1, got null",
        "study.json | deals | -1 | expected a whole number, 0 or more",
        "study.json | deals | 1e999999 | expected a whole number, 0 or more",
        "study.json | show | \"sits\" | expected \"lines\" or \"families\"",
        "study.json | question | 7 | expected a text",
        "manifest.json | deals | 1.5 | expected a whole number, 0 or more",
        "manifest.json | games | \"many\" | expected a whole number, 0 or more",
        "manifest.json | seed | 1e99999 | expected a whole number",
        "manifest.json | stream-version | [] | expected a whole number",
        "manifest.json | state | \"done\" | expected \"running\" or \"stopped\" or \"complete\"",
        "manifest.json | card | [1] | expected a text of at most 10,000 letters",
        "manifest.json | files | [1] | expected a list of names",
      })
  void fact_thatCannotBe_isNamed(String file, String field, String value, String message)
      throws IOException {
    Map<String, String> files = RealResults.files("table");
    String text = files.get(file);
    String changed =
        text.replaceFirst(
            "(?m)(?s)^ \"" + Pattern.quote(field) + "\": (\\[[^]]*\\]|[^\\n]*?)(,?)$",
            " \"" + field + "\": " + value + "$2");
    assertThat(changed).isNotEqualTo(text);
    files.put(file, changed);
    refused(
        "table", files, file + "\", field \"" + field + "\": ", message, "play the study again");
  }

  private void refused(String design, Map<String, String> files, String... words)
      throws IOException {
    Path changed = RealResults.write(folder.resolve(design), files);
    assertThatThrownBy(() -> AllPapers.of(changed))
        .isInstanceOf(WrongResultsException.class)
        .hasMessageContainingAll(words);
  }

  /** The first row with another cell; cells of these files hold no commas in the first row. */
  private static String edited(String text, String column, String cell) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    List<String> cells = new ArrayList<>(Arrays.asList(lines.get(1).split(",", -1)));
    int at = Arrays.asList(lines.get(0).split(",")).indexOf(column);
    assertThat(at).as(column).isNotNegative();
    cells.set(at, cell);
    lines.set(1, String.join(",", cells));
    return String.join("\n", lines) + "\n";
  }
}
