package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.tallywall.experiments.browser.Chromium;

/** Pages of reviews as a browser shows and prints them; left out where there is none. */
@Tag("browser")
@Tag("long")
class ReviewBrowserTest {
  private static final String LEFT_OUT =
      "The browser tests of reviews are left out: this machine has no chromium with chromedriver.";
  private static final String CARD = "cards/saltmarsh-quay.json";

  @TempDir static Path folder;
  private static Chromium browser;

  @BeforeAll
  static void make() {
    browser = Chromium.start().orElse(null);
    if (browser == null) {
      System.out.println(LEFT_OUT);
    }
    assumeTrue(browser != null, LEFT_OUT);
    String scenes = "scenes/heron-reach/";
    review("one", scenes + "call-to-be-one-away.txt");
    review("two", scenes + "pass-the-strangers.txt", scenes + "leave-the-dead-pair.txt");
    review("among", scenes + "redeem-with-the-stranger.txt", "--among", "nearest,random-legal");
    String record = folder.resolve("one.jsonl").toString();
    assertThat(
            Typed.run(
                    "game",
                    "--card",
                    CARD,
                    "--seed",
                    "3",
                    "--deal",
                    "2",
                    "--players",
                    "random-legal,nearest,nearest,nearest",
                    "--record",
                    record)
                .code())
        .isZero();
    review(
        "game",
        record,
        "--card",
        CARD,
        "--game",
        "0",
        "--seat",
        "0",
        "--players",
        "nearest",
        "--playouts",
        "3000");
  }

  private static void review(String name, String... words) {
    List<String> all = new java.util.ArrayList<>(List.of("review"));
    all.addAll(List.of(words));
    all.addAll(List.of("--html", folder.resolve(name + ".html").toString()));
    if (!all.contains("--playouts")) {
      all.addAll(List.of("--playouts", "200"));
    }
    if (!all.contains("--among") && !all.contains("--players")) {
      all.addAll(List.of("--players", "nearest"));
    }
    Typed typed = Typed.run(all.toArray(new String[0]));
    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  @ParameterizedTest
  @CsvSource({"one, 2", "two, 4", "among, 6", "game, 4"})
  void page_fitsIsReadByAllAndPrintsOnFewSheets(String name, int most) throws IOException {
    Path page = folder.resolve(name + ".html");
    for (int width : List.of(390, 1280)) {
      browser.open(page, width);
      assertThat(browser.console()).isEmpty();
      assertThat(browser.requests())
          .isNotEmpty()
          .allMatch(url -> url.startsWith(page.toUri().toString()) || url.equals("data:,"));
      assertThat((Long) browser.run("return document.documentElement.scrollWidth"))
          .isLessThanOrEqualTo(width);
      assertThat(browser.findings()).isEmpty();
    }
    assertThat(browser.sheets()).isBetween(1, most);
  }

  /** Every tile of the rack is drawn, from symbols that are there. */
  @Test
  void position_drawsItsTiles() {
    browser.open(folder.resolve("one.html"), 390);
    assertThat(browser.driver().findElements(By.cssSelector(".position .rack .tile"))).hasSize(10);
    assertThat(browser.driver().findElements(By.cssSelector(".position .offer .tile"))).hasSize(1);
    assertThat(
            browser.run(
                "return Array.from(document.querySelectorAll('.position use')).filter("
                    + "function (u) { return !document.querySelector(u.getAttribute('href')); })"
                    + ".length"))
        .isEqualTo(0L);
    assertThat(
            (Boolean)
                browser.run(
                    "return Array.from(document.querySelectorAll('.position .tile')).every("
                        + "function (t) { return t.getBoundingClientRect().width > 12; })"))
        .isTrue();
  }

  /** A link leads to the table as the player saw it; the next step has the verdict. */
  @Test
  void game_linkOfTheTable_leadsToTheDecision() {
    browser.open(folder.resolve("game.html"), 1280);
    browser.driver().findElement(By.cssSelector(".to-steps a")).click();
    assertThat(browser.driver().findElements(By.cssSelector(".rack.closed"))).hasSize(3);
    String talk = "";
    for (int step = 0; step < 2 && !talk.contains("by the review"); step++) {
      talk = browser.driver().findElement(By.className("talk")).getText();
      browser.driver().findElement(By.xpath("//button[text()='Forward']")).click();
    }
    assertThat(talk).contains("by the review, ");
  }
}
