package org.tallywall.reports.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.reports.results.WrongResultsException;

/** Results that could be and that nobody wants: the time limits are there only for what hangs. */
@Tag("long")
class AbsurdResultsTest {
  private static final long MOST_BYTES = 40 << 20;

  @TempDir private Path folder;

  @Test
  void ways_inThousands_areToldByTheirBeginning() throws IOException {
    assertToldByTheirBeginning(2_500, "2,500");
  }

  @Test
  @Timeout(value = 10, unit = TimeUnit.MINUTES)
  void ways_inTenThousands_areToldByTheirBeginning() throws IOException {
    assertToldByTheirBeginning(10_000, "10,000");
  }

  private void assertToldByTheirBeginning(int number, String inWords) throws IOException {
    Map<String, String> files = RealResults.files("arms");
    StringBuilder wins = new StringBuilder(header(files, "win-rates.csv"));
    StringBuilder differences = new StringBuilder(header(files, "differences.csv"));
    StringBuilder ways = new StringBuilder(header(files, "ways.csv"));
    String win = row(files, "win-rates.csv", "sometimes,all,");
    String difference = row(files, "differences.csv", "sometimes,never,win-rate,primary,");
    String way = row(files, "ways.csv", "sometimes,");
    for (int at = 0; at < number; at++) {
      wins.append(win.replaceFirst("sometimes", "way " + at)).append('\n');
      differences.append(difference.replaceFirst("sometimes", "way " + at)).append('\n');
      ways.append(way.replaceFirst("sometimes", "way " + at)).append('\n');
    }
    files.put("win-rates.csv", wins.toString());
    files.put("differences.csv", differences.toString());
    files.put("ways.csv", ways.toString());
    List<String> papers = AllPapers.of(RealResults.write(folder, files));
    assertThat(papers.stream().mapToLong(String::length).sum()).isLessThan(MOST_BYTES);
    assertThat(papers)
        .anyMatch(
            paper ->
                paper.contains(
                    "This chart has the first 60 of " + inWords + "; the files have them all"))
        .anyMatch(paper -> paper.contains("These are the first 2,000 of " + inWords + " rows"));
  }

  @Test
  void name_asLongAsABook_isRefused() throws IOException {
    Map<String, String> files = RealResults.files("table");
    String name = "x".repeat(1 << 20);
    files.compute(
        "families.csv", (file, text) -> text.replaceFirst("table,[^,]*", "table," + name));
    refused(files, "families.csv\", after line 1: a cell is longer than this program reads");
    files.putAll(RealResults.files("table"));
    files.compute(
        "study.json",
        (file, text) -> text.replaceFirst("\"question\": \"", "\"question\": \"" + name));
    refused(files, "study.json\", field \"question\": expected a text of at most 10,000 letters");
  }

  /** The longest name that is read: a picture shows its beginning, a table all of it. */
  @Test
  @Timeout(value = 5, unit = TimeUnit.MINUTES)
  void name_asLongAsAPage_isShownShortened() throws IOException {
    Map<String, String> files = RealResults.files("table");
    String name = "x".repeat(9_000);
    files.compute("win-rates.csv", (file, text) -> text.replace(",nearest,", "," + name + ","));
    List<String> papers = AllPapers.of(RealResults.write(folder, files));
    assertThat(papers).anyMatch(paper -> paper.startsWith("<svg") && paper.contains("\u2026"));
    assertThat(papers.stream().mapToLong(String::length).sum()).isLessThan(MOST_BYTES / 20);
  }

  @Test
  void rows_withoutEnd_areRefused() throws IOException {
    Map<String, String> files = RealResults.files("table");
    String row = row(files, "endings.csv", "table,") + "\n";
    files.compute("endings.csv", (file, text) -> text + row.repeat(50_001));
    refused(
        files, "endings.csv\", after line 50001: the file has more rows than this program reads");
  }

  private void refused(Map<String, String> files, String words) throws IOException {
    Path changed = RealResults.write(folder, files);
    assertThatThrownBy(() -> AllPapers.of(changed))
        .isInstanceOf(WrongResultsException.class)
        .hasMessageContaining(words)
        .satisfies(said -> assertThat(said.getMessage()).hasSizeLessThan(500));
  }

  private static String header(Map<String, String> files, String file) {
    return files.get(file).lines().findFirst().orElseThrow() + "\n";
  }

  private static String row(Map<String, String> files, String file, String start) {
    return files.get(file).lines().filter(line -> line.startsWith(start)).findFirst().orElseThrow();
  }
}
