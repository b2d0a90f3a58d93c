package org.tallywall.reports.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.reports.document.Pictures;
import org.tallywall.reports.markdown.DocumentWriter;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;

/** What notes say of comparisons that are not clear, and of a way that all four seats have. */
class CloseCallsTest {
  @TempDir private Path folder;

  /** The run has two ways of playing, both compared with the same third one in games won. */
  @Test
  void severalCloseCalls_shareOneParagraph() throws IOException {
    Map<String, String> files = RealResults.files("arms");
    assertThat(notes(files))
        .contains("“sometimes” and “never” are too close to call: on the same deals")
        .contains("could be anything");
    files.compute(
        "differences.csv", (file, text) -> text.replace(",0.010291431720895734,", ",0.08,"));
    assertThat(notes(files))
        .contains(
            "\n\nOn the same deals, the difference from “never” in games won in 100 could be anything"
                + " in these ranges: for “sometimes” 10.1 fewer to 0.1 more; for “often” 3.7 to"
                + " 15.5 more (this leaves out 0, but not after allowing for 6 comparisons). The"
                + " smallest difference that a run of 60 deals would catch nine times out of ten is"
                + " 9.9 to 12 (by way of playing) games in 100; there may be a smaller one.[^1][^2]")
        .contains("[^1]: “sometimes”: 95% interval", "[^2]: “often”: 95% interval")
        .doesNotContain("are too close to call: on the same deals");
  }

  /** Points of “sometimes”: the range is -1,880 to -130, the adjusted p 0.097. */
  @Test
  void rangeThatLeavesOutZero_isExplainedWhereItIsNotClear() throws IOException {
    assertThat(notes(RealResults.files("arms")))
        .contains("| too close to call, allowing for 6 comparisons |")
        .contains("| too close to call |");
  }

  @Test
  void baselineOfFourAlike_isTold() throws IOException {
    Map<String, String> files = RealResults.files("arms");
    String note = "“never” is four equal players: they are one game a deal, not four";
    assertThat(notes(files)).containsOnlyOnce(note);
    files.compute(
        "win-rates.csv",
        (file, text) ->
            text.replace(
                "never,all,nearest,60,240,58,0.24166666666666667,,,,0,,,,",
                "never,all,nearest,60,240,58,0.24166666666666667,,,,-3.5,-9,2,t over deals,"));
    assertThat(notes(files)).doesNotContain("four equal players");
  }

  @Test
  void rangesOfARunThatIsNotComplete_holdAtEveryLook() throws IOException {
    Map<String, String> files = RealResults.files("arms");
    String every = "the range in parentheses holds the true number at every look.";
    String fixed = "the range in parentheses would hold the true number.";
    assertThat(notes(files)).contains(fixed).doesNotContain(every);
    files.computeIfPresent(
        "manifest.json",
        (name, text) ->
            text.replace("\"complete\"", "\"stopped\", \"provisional\": { \"deals\": 40 }"));
    assertThat(notes(files)).contains(every).doesNotContain(fixed);
  }

  private String notes(Map<String, String> files) throws IOException {
    Path written = RealResults.write(folder, files);
    return DocumentWriter.text(
        Notes.of(ResultsFolder.read(written, new ThisProgram("0.1.0", 1))),
        Pictures.in("charts", "png"));
  }
}
