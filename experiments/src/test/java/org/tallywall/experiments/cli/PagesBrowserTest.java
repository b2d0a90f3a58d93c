package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.tallywall.experiments.browser.Chromium;
import org.tallywall.experiments.paper.SampleResults;

/**
 * The pages of a real run as a browser shows them. Without Chromium and its driver these tests are
 * left out, and say so.
 */
@Tag("browser")
@Tag("long")
class PagesBrowserTest {
  private static final String LEFT_OUT =
      "The browser tests of reports and games are left out: this machine has no chromium with"
          + " chromedriver.";

  @TempDir static Path folder;
  private static Chromium browser;
  private static Path table;
  private static Path arms;
  private static Path hostile;
  private static Path pack;
  private static Path deal;
  private static Path wait;

  /** One fixed table, two ways of playing, and names that bite. */
  @BeforeAll
  static void make() {
    browser = Chromium.start().orElse(null);
    if (browser == null) {
      System.out.println(LEFT_OUT);
    }
    assumeTrue(browser != null, LEFT_OUT);
    String card = Cards.small(folder);
    table = run(card, "look", "\"table\": [\"nearest\", \"nearest\", \"nearest\", \"nearest\"]");
    arms =
        run(
            card,
            "duel",
            "\"arms\": {\"a\": \"reckoner\", \"b\": \"nearest\"}, \"baseline\": \"a\","
                + " \"others\": \"reckoner\", \"primary\": \"points\"");
    hostile = SampleResults.hostile(folder.resolve("hostile"));
    reported("report", hostile.toString());
    pack = folder.resolve("pack.html");
    reported("report", table.toString(), arms.toString(), "--out", pack.toString());
    deal = folder.resolve("deal.html");
    reported("chances", "pairs", "--html", deal.toString());
    wait = folder.resolve("wait.html");
    reported("chances", "wait", "5b 8b", "--wall", "20..80", "--html", wait.toString());
  }

  private static Path run(String card, String name, String design) {
    String text =
        "{ \"study\": \"%s\", \"card\": \"%s\", \"seed\": 7, %s, \"deals\": 60, \"records\": 2 }"
            .formatted(name, Path.of(card).getFileName(), design);
    Path out = folder.resolve(name);
    reported(
        "run",
        Cards.write(folder, name + ".json", text),
        "--out",
        out.toString(),
        "--threads",
        "2");
    return out;
  }

  private static void reported(String... words) {
    Typed typed = Typed.run(words);
    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  static Stream<Path> pages() {
    return Stream.of(
        table.resolve("report.html"),
        arms.resolve("report.html"),
        hostile.resolve("report.html"),
        pack,
        deal,
        wait);
  }

  @ParameterizedTest
  @MethodSource("pages")
  void page_onAPhoneAndADesk_asksForNothingFitsAndCanBeReadByAll(Path page) throws IOException {
    for (int width : List.of(360, 1280)) {
      browser.open(page, width);
      assertThat(browser.console()).isEmpty();
      assertThat(browser.requests())
          .isNotEmpty()
          .allMatch(url -> url.startsWith(page.toUri().toString()) || url.equals("data:,"));
      assertThat((Long) run("return document.documentElement.scrollWidth"))
          .isLessThanOrEqualTo(width);
      assertThat(browser.findings()).isEmpty();
    }
  }

  /** A sum is handed out on one sheet or two, and one over a long range on three. */
  @Test
  void chances_printed_takeFewSheets() {
    browser.open(deal, 1280);
    assertThat(browser.sheets()).isLessThanOrEqualTo(2);
    browser.open(wait, 1280);
    assertThat(browser.sheets()).isLessThanOrEqualTo(3);
  }

  @Test
  void names_withScripts_standAsText() {
    browser.open(hostile.resolve("report.html"), 1280);
    String name = "<script>document.title='harmed'</script>";
    assertThat(browser.driver().getTitle()).isEqualTo(name);
    assertThat(browser.driver().findElement(By.tagName("h1")).getText()).isEqualTo(name);
    assertThat(run("return document.querySelectorAll('script').length")).isEqualTo(1L);
    assertThat(run("return document.querySelectorAll('img').length")).isEqualTo(0L);
  }

  @ParameterizedTest
  @ValueSource(ints = {360, 1280})
  void lines_ofTheCard_sortByWinsAndFilterBySection(int width) {
    browser.open(table.resolve("report.html"), width);
    unfold();
    WebElement grid =
        browser
            .driver()
            .findElement(
                By.xpath("//div[contains(@class,'grid')][.//caption[contains(.,'Which lines')]]"));
    assertThat(first(grid)).containsExactly("L1", "L2", "V1", "V2", "C1");
    grid.findElement(By.cssSelector("input[type=search]")).sendKeys("ladders");
    assertThat(first(grid)).containsExactly("L1", "L2");
    grid.findElement(By.cssSelector("input[type=search]"))
        .sendKeys(Keys.chord(Keys.CONTROL, "a"), "pier");
    assertThat(first(grid)).containsExactly("L1");
    grid.findElement(By.cssSelector("input[type=search]"))
        .sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.BACK_SPACE);
    grid.findElement(By.xpath(".//thead//button[text()='value']")).sendKeys(Keys.ENTER);
    assertThat(first(grid)).startsWith("L2").endsWith("C1");
    assertThat(grid.getText()).doesNotContain("2222x");
  }

  /** From the report to a kept game. */
  @Test
  void game_fromTheReport_opensAtItsDeal() {
    browser.open(table.resolve("report.html"), 1280);
    unfold();
    browser.driver().findElement(By.partialLinkText("Deal 0:")).click();
    assertThat(browser.driver().findElement(By.className("now")).getText()).isEqualTo("The deal");
    assertThat(browser.driver().findElements(By.className("seat"))).hasSize(4);
    assertThat(browser.console()).isEmpty();
  }

  /** Opens every part of the page that is folded. */
  private static void unfold() {
    run("document.querySelectorAll('details').forEach(part => part.open = true)");
  }

  private static List<String> first(WebElement grid) {
    return grid.findElements(By.cssSelector("tbody tr:not([hidden]) th")).stream()
        .map(WebElement::getText)
        .toList();
  }

  private static Object run(String script) {
    return browser.run(script);
  }
}
