package org.tallywall.reports.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;
import org.tallywall.reports.results.WrongResultsException;

/** Figures of a run that is not complete: the mark stands on every paper and every chart. */
class ProvisionalTest {
  private static final String MARK = "PROVISIONAL: ";

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "table       | stopped  | 40 | PROVISIONAL: 40 of 60 deals",
        "arms        | running  | 40 | PROVISIONAL: 40 of 60 deals",
        "sweep       | stopped  | 60 | PROVISIONAL: 60 of 60 deals",
        "round-robin | stopped  | 1  | PROVISIONAL: 1 of 60 deals",
        "branch      | running  | 40 | PROVISIONAL: 40 of 60 deals",
        "until       | stopped  | 500 | PROVISIONAL: 500 of at most 1,500 deals",
      })
  void everyPaper_ofARunThatIsNotComplete_carriesTheMark(
      String design, String state, int deals, String mark) throws IOException {
    List<String> papers = AllPapers.of(folder(design, state, "{ \"deals\": " + deals + " }"));

    assertThat(papers).hasSizeGreaterThan(4).allSatisfy(paper -> assertThat(paper).contains(mark));
    String page = papers.get(papers.size() - 1);
    long charts = count(page, "<svg");
    assertThat(charts).isPositive();
    assertThat(count(page, MARK)).as("in the page's charts, too").isGreaterThan(charts);
    assertThat(papers)
        .noneMatch(paper -> paper.contains("came to its last deal"))
        .noneMatch(paper -> paper.contains("fixed before the run."));
  }

  @ParameterizedTest
  @ValueSource(strings = {"table", "arms", "until", "sweep", "round-robin", "branch"})
  void paper_ofACompleteRun_hasNoMark(String design) throws IOException {
    assertThat(AllPapers.of(folder(design, "complete", "{ \"deals\": 40 }")))
        .noneMatch(paper -> paper.contains(MARK));
    assertThat(AllPapers.of(RealResults.write(folder, RealResults.files(design))))
        .noneMatch(paper -> paper.contains(MARK));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{ }              | holds a run that is not complete",
        "{ \"deals\": 0 } | field \"deals\": expected a whole number, 1 or more, got 0",
        "{ \"deals\": 2.5 } | field \"deals\": expected a whole number, 1 or more",
        "{ \"deals\": 5, \"faults\": -1 } | field \"faults\": expected a whole number, 0 or more",
        "\"yes\"          | field \"provisional\": expected an object in braces",
      })
  void wrongCount_ofARunThatIsNotComplete_isRefused(String field, String message)
      throws IOException {
    Path wrong = folder("arms", "stopped", field);
    assertThatThrownBy(() -> ResultsFolder.read(wrong, new ThisProgram("0.1.0", 1)))
        .isInstanceOf(WrongResultsException.class)
        .hasMessageContaining(message);
  }

  private Path folder(String design, String state, String field) throws IOException {
    Map<String, String> files = RealResults.files(design);
    files.computeIfPresent(
        "manifest.json",
        (name, text) ->
            text.replace("\"complete\"", "\"" + state + "\",\n  \"provisional\" : " + field));
    return RealResults.write(folder, files);
  }

  private static long count(String text, String part) {
    return (text.length() - text.replace(part, "").length()) / part.length();
  }
}
