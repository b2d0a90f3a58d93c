package org.tallywall.reports.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.print.PrintOptions;
import org.tallywall.reports.charts.Charts;
import org.tallywall.reports.document.Pictures;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.html.FragmentWriter;
import org.tallywall.reports.html.PageWriter;
import org.tallywall.reports.papers.Notes;
import org.tallywall.reports.papers.ReportPage;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;
import org.tallywall.reports.svg.SvgWriter;

/** Reports of small runs of every design on a desk, on a phone and on paper. */
@Tag("browser")
@Tag("long")
class ReportPagesTest {
  private static final String LEFT_OUT =
      "The browser tests of reports are left out: this machine has no chromium with chromedriver.";

  /** What a teacher will print and hand out. */
  private static final int MOST_SHEETS = 6;

  private static final Pattern SHEET = Pattern.compile("/Type\\s*/Page\\b");

  @TempDir static Path folder;
  private static Chromium browser;

  @BeforeAll
  static void start() {
    browser = Chromium.start().orElse(null);
    if (browser == null) {
      System.out.println(LEFT_OUT);
    }
    assumeTrue(browser != null, LEFT_OUT);
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"table", "arms", "until", "sweep", "round-robin", "branch"})
  void report_printed_takesFewSheets(String design) throws IOException {
    browser.open(page(design), 1280);
    long closed = sheets();
    assertThat(closed).isBetween(1L, (long) MOST_SHEETS);
    unfold();
    assertThat(sheets()).as("what is opened is printed").isGreaterThan(closed);
  }

  /** Not a column is out of sight on a desk, with every part unfolded. */
  @ParameterizedTest
  @ValueSource(strings = {"table", "arms", "sweep", "round-robin", "branch"})
  void tables_onADesk_showAllTheirColumns(String design) throws IOException {
    browser.open(page(design), 1280);
    unfold();
    assertThat(
            (List<?>)
                run(
                    "return Array.from(document.querySelectorAll('.scroll'))"
                        + ".filter(function (s) { return s.scrollWidth > s.clientWidth + 1; })"
                        + ".map(function (s) { return s.textContent.slice(0, 60); })"))
        .isEmpty();
    assertThat(
            (List<?>)
                run(
                    "return Array.from(document.querySelectorAll('thead th')).filter("
                        + "function (h) { return h.clientHeight > 5 * 18; })"
                        + ".map(function (h) { return h.textContent; })"))
        .as("headings of more than four lines")
        .isEmpty();
  }

  /** Short tables are cards; a longer one that does not fit says so; charts fit. */
  @Test
  void report_onAPhone_losesNothingToTheRight() throws IOException {
    browser.open(page("arms"), 390);
    unfold();
    assertThat((Long) run("return document.documentElement.scrollWidth")).isLessThanOrEqualTo(390L);
    assertThat(
            (List<?>)
                run(
                    "return Array.from(document.querySelectorAll('.grid')).filter("
                        + "function (g) { var s = g.querySelector('.scroll');"
                        + " return s.scrollWidth > s.clientWidth + 1"
                        + " && (g.classList.contains('cards') || g.querySelector('.hint').hidden);"
                        + " }).map(function (g) { return g.textContent.slice(0, 60); })"))
        .isEmpty();
    assertThat(
            (List<?>)
                run(
                    "return Array.from(document.querySelectorAll('.chart svg')).filter("
                        + "function (s) { var b = s.getBoundingClientRect();"
                        + " return b.width > 0 && (b.right > 390 || s.classList.contains('broad'));"
                        + " })"))
        .isEmpty();
  }

  /** The notes for a mail keep within the window, too, and their lines are short on a desk. */
  @ParameterizedTest
  @ValueSource(strings = {"table", "arms", "until", "sweep", "round-robin", "branch"})
  void notes_keepWithinTheWindow_andTheirLinesShort(String design) throws IOException {
    Path notes = notes(design);
    browser.open(notes, 390);
    assertThat((Long) run("return document.documentElement.scrollWidth")).isLessThanOrEqualTo(390L);
    assertThat((Long) run("return document.images.length")).isPositive();
    browser.open(notes, 1280);
    assertThat((Long) run("return document.documentElement.scrollWidth"))
        .isLessThanOrEqualTo(1280L);
    assertThat(
            (List<?>)
                run(
                    "return Array.from(document.querySelectorAll('p, li')).filter(function (p) {"
                        + " var b = p.getBoundingClientRect();"
                        + " return b.width > 46 * 16 || b.left < 16; })"
                        + ".map(function (p) { return p.textContent.slice(0, 60); })"))
        .isEmpty();
  }

  private static long sheets() {
    String pdf = browser.driver().print(new PrintOptions()).getContent();
    String text = new String(Base64.getDecoder().decode(pdf), StandardCharsets.ISO_8859_1);
    return SHEET.matcher(text).results().count();
  }

  private static void unfold() {
    run("document.querySelectorAll('details').forEach(function (d) { d.open = true; })");
  }

  private static Object run(String script) {
    return browser.driver().executeScript(script);
  }

  private static Results results(String design) {
    return ResultsFolder.read(
        Path.of("src/test/resources/results", design), new ThisProgram("0.1.0", 1));
  }

  private static Path notes(String design) throws IOException {
    Results results = results(design);
    for (Figure figure : Charts.of(results)) {
      Files.writeString(folder.resolve(figure.caption().stem() + ".svg"), SvgWriter.text(figure));
    }
    String text = FragmentWriter.text(Notes.of(results), Pictures.in("charts", "svg"));
    return Files.writeString(folder.resolve(design + "-notes.html"), text);
  }

  private static Path page(String design) throws IOException {
    ReportPage page = new ReportPage(results(design), Map.of(), List.of());
    Path file = folder.resolve(design + ".html");
    return Files.writeString(file, PageWriter.text(page.document()));
  }
}
