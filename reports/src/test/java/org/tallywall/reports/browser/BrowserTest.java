package org.tallywall.reports.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.tallywall.reports.SampleDocuments;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.html.PageWriter;

/**
 * Pages as a browser shows them. Without Chromium and its driver these tests are left out, and say
 * so.
 */
@Tag("browser")
@Tag("long")
class BrowserTest {
  private static final String LEFT_OUT =
      "The browser tests of the pages are left out: this machine has no chromium with chromedriver.";

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
  @ValueSource(ints = {360, 1280})
  void page_opened_asksForNothingAndComplainsOfNothing(int width) throws IOException {
    open(SampleDocuments.everyPart(), width);
    assertThat(browser.console()).isEmpty();
    assertThat(browser.requests())
        .isNotEmpty()
        .allMatch(url -> url.startsWith(folder.toUri().toString()) || url.equals("data:,"));
  }

  @ParameterizedTest
  @ValueSource(ints = {360, 1280})
  void page_opened_isNoWiderThanTheScreen(int width) throws IOException {
    for (Document document : documents()) {
      open(document, width);
      Object wide = run("return document.documentElement.scrollWidth");
      assertThat((Long) wide).as(document.title()).isLessThanOrEqualTo(width);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {360, 1280})
  void page_judgedForAccess_hasNoFinding(int width) throws IOException {
    for (Document document : documents()) {
      open(document, width);
      assertThat(findings()).as(document.title()).isEmpty();
    }
  }

  @Test
  void names_withScripts_standAsText() throws IOException {
    open(SampleDocuments.awkward(), 1280);
    String name = SampleDocuments.awkward().title();
    assertThat(driver().getTitle()).isEqualTo(name);
    assertThat(driver().findElement(By.tagName("h1")).getText()).isEqualTo(name);
    assertThat(run("return document.querySelectorAll('script').length")).isEqualTo(1L);
    assertThat(browser.console()).isEmpty();
  }

  @Test
  void column_clicked_sortsUpAndDown() throws IOException {
    open(SampleDocuments.everyPart(), 1280);
    WebElement heading = heading("Lines of the card", "wins when aimed at");
    heading.findElement(By.tagName("button")).click();
    assertThat(heading.getAttribute("aria-sort")).isEqualTo("ascending");
    assertThat(firstCells("Lines of the card")).startsWith("Ferry 1", "Evens 6", "Winds 2");
    heading.findElement(By.tagName("button")).click();
    assertThat(heading.getAttribute("aria-sort")).isEqualTo("descending");
    assertThat(firstCells("Lines of the card")).startsWith("Quay 5", "Winds 9", "Evens 3");
  }

  @Test
  void column_byKeyboard_sorts() throws IOException {
    open(SampleDocuments.everyPart(), 1280);
    WebElement heading = heading("Lines of the card", "line");
    heading.findElement(By.tagName("button")).sendKeys(Keys.ENTER);
    assertThat(heading.getAttribute("aria-sort")).isEqualTo("ascending");
    assertThat(firstCells("Lines of the card")).startsWith("Evens 1", "Evens 2", "Evens 3");
    heading.findElement(By.tagName("button")).sendKeys(Keys.SPACE);
    assertThat(firstCells("Lines of the card")).startsWith("Winds 10", "Winds 9");
  }

  /** Rows without a value stay last, whichever way the column is sorted. */
  @Test
  void emptyCells_sorted_stayLast() throws IOException {
    open(SampleDocuments.everyPart(), 1280);
    WebElement button = heading("How two ways", "wins").findElement(By.tagName("button"));
    button.click();
    assertThat(firstCells("How two ways")).endsWith("hold back, then play on");
    button.click();
    assertThat(firstCells("How two ways"))
        .containsExactly("nearest", "random-legal", "hold back, then play on");
  }

  @ParameterizedTest
  @ValueSource(ints = {360, 1280})
  void filter_typed_leavesRowsThatHoldTheWords(int width) throws IOException {
    open(SampleDocuments.everyPart(), width);
    WebElement grid = grid("Lines of the card");
    WebElement filter = grid.findElement(By.cssSelector("input[type=search]"));
    filter.sendKeys("QUAY 1");
    assertThat(firstCells("Lines of the card")).containsExactly("Quay 1", "Quay 10");
    assertThat(grid.findElement(By.className("said")).getText()).isEqualTo("2 of 40 rows");
    filter.sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.BACK_SPACE);
    assertThat(firstCells("Lines of the card")).hasSize(40);
  }

  /** What is copied is what is seen: sorted, filtered, with headings. */
  @Test
  void table_copied_isLinesWithTabs() throws IOException {
    open(SampleDocuments.everyPart(), 1280);
    WebElement grid = grid("Lines of the card");
    grid.findElement(By.cssSelector("input[type=search]")).sendKeys("ferry 10");
    run(
        "window.kept = {}; window.put = DataTransfer.prototype.setData;"
            + "DataTransfer.prototype.setData = function (type, text) {"
            + " window.kept[type] = text; return window.put.call(this, type, text); };");
    grid.findElement(By.xpath(".//button[text()='Copy table']")).click();
    assertThat(run("return window.kept['text/plain']"))
        .isEqualTo("line\twins when aimed at\tvalue\nFerry 10\t12.0 % (10.0 % to 14.0 %)\t25\n");
    assertThat((String) run("return window.kept['text/html']"))
        .startsWith("<table border=\"1\">")
        .contains("<td align=\"right\">25</td>");
    assertThat(grid.findElement(By.className("said")).getText()).isEqualTo("Copied");
  }

  /** Paper has what is open on the page, and a word at each part that is not. */
  @Test
  void foldedSection_printed_staysFolded() throws IOException {
    open(SampleDocuments.everyPart(), 1280);
    String state = "return document.querySelector('details:not(.meanings):not([open])') === null";
    run("window.dispatchEvent(new Event('beforeprint'))");
    assertThat(run(state)).isEqualTo(false);
    driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
    try {
      assertThat(
              run(
                  "return getComputedStyle(document.querySelector("
                      + "'details:not(.meanings):not([open]) > summary'), '::after').content"))
          .asString()
          .contains("not printed: open this part on the page first");
    } finally {
      driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
    }
  }

  /** With the fonts of this machine no text leaves its picture or covers another. */
  @ParameterizedTest
  @ValueSource(ints = {360, 1280})
  void texts_ofCharts_areReadable(int width) throws IOException {
    open(SampleDocuments.figures(), width);
    assertThat((List<?>) run(resource("/browser/covered.js"))).isEmpty();
  }

  private static List<Document> documents() {
    return List.of(
        SampleDocuments.everyPart(), SampleDocuments.awkward(), SampleDocuments.figures());
  }

  /** What the accessibility engine axe-core finds, of whatever weight. */
  private static List<String> findings() throws IOException {
    run(resource("/axe.min.js"));
    Object found =
        driver()
            .executeAsyncScript(
                "var done = arguments[arguments.length - 1];"
                    + "axe.run().then(function (result) { done(result.violations.map("
                    + "function (v) { return v.impact + ' ' + v.id + ' ' + v.help + ' '"
                    + " + v.nodes.map(function (n) { return n.html; }).join(' | '); })); });");
    return ((List<?>) found).stream().map(String::valueOf).toList();
  }

  private static void open(Document document, int width) throws IOException {
    Path file = folder.resolve("page.html");
    Files.writeString(file, PageWriter.text(document));
    browser.open(file, width);
  }

  private static ChromeDriver driver() {
    return browser.driver();
  }

  private static Object run(String script) {
    return driver().executeScript(script);
  }

  private static WebElement grid(String title) {
    return driver()
        .findElement(
            By.xpath("//div[contains(@class,'grid')][.//caption[contains(.,'" + title + "')]]"));
  }

  private static WebElement heading(String title, String name) {
    return grid(title).findElement(By.xpath(".//thead//th[normalize-space(.)='" + name + "']"));
  }

  /** The first cells of the rows that are seen. */
  private static List<String> firstCells(String title) {
    return grid(title).findElements(By.cssSelector("tbody tr:not([hidden]) th")).stream()
        .map(WebElement::getText)
        .toList();
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = BrowserTest.class.getResourceAsStream(name)) {
      assertThat(in).as(name).isNotNull();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
