package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.Rectangle;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.tallywall.experiments.browser.Chromium;

/**
 * The page of a game as a class sees it. Without Chromium and its driver these tests are left out,
 * and say so.
 */
@Tag("browser")
@Tag("long")
class GameBrowserTest {
  private static final String LEFT_OUT =
      "The browser tests of the pages of games are left out: this machine has no chromium with"
          + " chromedriver.";

  @TempDir static Path folder;
  private static Chromium browser;
  private static Path page;
  private static List<String> titles;

  @BeforeAll
  static void make() throws IOException {
    browser = Chromium.start().orElse(null);
    if (browser == null) {
      System.out.println(LEFT_OUT);
    }
    assumeTrue(browser != null, LEFT_OUT);
    page = game(3, "reckoner,watchful,nearest,watchful");
    titles =
        Pattern.compile("class=\"title\"[^>]*>([^<]*)<")
            .matcher(Files.readString(page))
            .results()
            .map(found -> found.group(1))
            .toList();
  }

  private static Path game(int seed, String players) {
    Path file = folder.resolve("game-" + seed + ".html");
    Typed typed =
        Typed.run(
            "game",
            "--card",
            "cards/saltmarsh-quay.json",
            "--seed",
            "" + seed,
            "--deal",
            "1",
            "--players",
            players,
            "--html",
            file.toString());
    assertThat(typed.err()).isEmpty();
    return file;
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "#step=40&seat=2",
        "#step=40&seat=1&quiz=on",
        "#step=30&seat=0&view=projector"
      })
  void page_onAPhoneAndADesk_asksForNothingFitsAndCanBeReadByAll(String link) throws IOException {
    for (int width : List.of(360, 1280)) {
      open(link, width);
      assertThat(browser.console()).isEmpty();
      assertThat(browser.requests())
          .isNotEmpty()
          .allMatch(url -> url.startsWith(page.toUri().toString()) || url.equals("data:,"));
      assertThat((Long) browser.run("return document.documentElement.scrollWidth"))
          .isLessThanOrEqualTo(width);
      assertThat(browser.findings()).as("%s at %s", link, width).isEmpty();
    }
  }

  /** Who plays after me sits at my right, whoever I am, with exposures towards the middle. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void seats_lieAsOneSits(int own) {
    open("#step=" + titles.size() + "&seat=" + own, 1280);
    Rectangle middle = find(".middle").getRect();
    Rectangle me = seat(own).getRect();
    Rectangle right = seat((own + 1) % 4).getRect();
    Rectangle across = seat((own + 2) % 4).getRect();
    Rectangle left = seat((own + 3) % 4).getRect();
    assertThat(me.y).isGreaterThanOrEqualTo(middle.y + middle.height);
    assertThat(across.y + across.height).isLessThanOrEqualTo(middle.y);
    assertThat(right.x).isGreaterThanOrEqualTo(middle.x + middle.width);
    assertThat(left.x + left.width).isLessThanOrEqualTo(middle.x);
    int shown = 0;
    for (WebElement seat : all(".seat:has(.group)")) {
      Rectangle rack = seat.findElement(By.className("rack")).getRect();
      Rectangle group = seat.findElement(By.className("group")).getRect();
      boolean inward =
          switch (seat.getDomAttribute("class").replace(" on-turn", "")) {
            case "seat own" -> group.y + group.height <= rack.y;
            case "seat across" -> group.y >= rack.y + rack.height;
            case "seat right" -> group.x + group.width <= rack.x;
            default -> group.x >= rack.x + rack.width;
          };
      assertThat(inward).isTrue();
      shown++;
    }
    assertThat(shown).isPositive();
  }

  @Test
  void steps_byKeysButtonsAndClicks_goOnAndBack() {
    open("", 1280);
    assertThat(now()).isEqualTo("The deal");
    assertThat(tiles(0)).hasSize(14).doesNotContain("back");
    browser.press(Keys.ARROW_RIGHT);
    assertThat(now()).isEqualTo("First right");
    assertThat(seat(1).findElements(By.cssSelector(".fresh"))).hasSize(3);
    assertThat(find(".talk").getText()).contains("East passes ", "aims at ", "why: ");
    browser.press(Keys.SPACE);
    assertThat(now()).isEqualTo("First across");
    button("Back").click();
    assertThat(now()).isEqualTo("First right");
    /* A button that has the focus takes the space bar for itself. */
    button("Forward").sendKeys(Keys.SPACE);
    assertThat(now()).isEqualTo("First across");
    button("Back").sendKeys(Keys.SPACE);
    assertThat(now()).isEqualTo("First right");
    browser.press(Keys.ARROW_RIGHT);
    assertThat(now()).isEqualTo("First across");
    find(".left-over").click();
    assertThat(now()).isEqualTo("First left");
    browser.press(Keys.END);
    assertThat(now()).startsWith("The end");
    browser.press(Keys.ARROW_RIGHT);
    assertThat(now()).startsWith("The end");
    browser.press(Keys.HOME);
    assertThat(now()).isEqualTo("The deal");
    browser.press(Keys.ARROW_LEFT);
    assertThat(now()).isEqualTo("The deal");
    assertThat(browser.console()).isEmpty();
  }

  @Test
  void c_goesFromCallToCall() {
    open("", 1280);
    List<String> seen = new ArrayList<>();
    while (seen.isEmpty() || !now().startsWith("The end")) {
      browser.press("c");
      seen.add(now());
    }
    List<String> calls =
        new ArrayList<>(
            titles.stream()
                .filter(t -> t.contains(" calls the ") || t.contains("mahjong"))
                .toList());
    assertThat(calls).hasSizeGreaterThan(1);
    calls.add(titles.get(titles.size() - 1));
    assertThat(seen).isEqualTo(calls);
  }

  /** In the middle lie the discards in order, the latest marked, and the wall's count. */
  @Test
  void discards_lieInOrderWithTheLatestMarked() {
    int step = titles.indexOf(titles.stream().filter(t -> t.contains("throws")).toList().get(4));
    open("#step=" + (step + 1) + "&seat=0", 1280);
    List<String> thrown =
        titles.subList(0, step + 1).stream()
            .filter(title -> title.contains(" throws "))
            .map(title -> title.substring(title.lastIndexOf(' ') + 1))
            .toList();
    assertThat(symbols(find(".discards"))).isEqualTo(thrown);
    assertThat(all(".discards .last")).hasSize(1);
    assertThat(symbols(find(".discards .last"))).containsExactly(thrown.get(thrown.size() - 1));
    assertThat(find(".left-over").getText()).isEqualTo("95 tiles left in the wall");
  }

  @Test
  void racks_closedButMine_keepTheirTilesAndWhatTheyAimAt() {
    open("#step=2&seat=1&racks=own", 1280);
    assertThat(tiles(1)).hasSize(13).doesNotContain("back");
    for (int closed : List.of(0, 2, 3)) {
      assertThat(tiles(closed)).containsOnly("back");
      assertThat(all(".talk p[data-seat='" + closed + "']")).isEmpty();
    }
    assertThat(find(".talk").getText()).contains("passes", "aims at");
    browser.driver().findElement(By.xpath("//label[contains(.,'aims and reasons')]/input")).click();
    assertThat(find(".talk").getText()).contains("passes").doesNotContain("aims");
  }

  /** Before each discard of the own seat the answer is hidden, and so is all that tells it. */
  @Test
  void question_beforeADiscard_hidesTheAnswerUntilAskedFor() {
    int step = question("Right of East");
    open("#step=" + step + "&seat=1", 1280);
    browser.press("q");
    assertThat(now()).isEqualTo("What would you throw?");
    String title = titles.get(step - 1);
    String tile = title.substring(title.lastIndexOf(' ') + 1);
    assertThat(tiles(1)).hasSize(14 - exposed(1)).contains(tile);
    for (int closed : List.of(0, 2, 3)) {
      assertThat(tiles(closed)).containsOnly("back");
    }
    assertThat(find("main").getText()).doesNotContain(title, "aims at", "Why", "The end");
    int discards = all(".discards li").size();
    browser.press(Keys.ARROW_RIGHT);
    assertThat(now()).isEqualTo(title);
    assertThat(find(".answer-why").getText()).contains("Aims at ").hasSizeGreaterThan(30);
    assertThat(all(".discards li")).hasSize(discards + 1);
    browser.press(Keys.ARROW_RIGHT);
    assertThat(now()).isEqualTo(titles.get(step)).isNotEqualTo(title);
    open("#step=" + step + "&seat=1&quiz=on", 1280);
    button("Show the answer").click();
    assertThat(now()).isEqualTo(title);
  }

  /** With questions asked, every own discard is asked for, and no other. */
  @Test
  void questions_throughAWholeGame_areTheOwnDiscards() {
    open("#step=1&seat=1&quiz=on", 1280);
    /* Keys are pressed within the page: a hundred and more from outside take long. */
    Object asked =
        browser.run(
            "var now = function () { return document.querySelector('.now').innerText; };"
                + "var asked = 0;"
                + "for (var press = 0; press < %s && !now().startsWith('The end'); press += 1) {"
                    .formatted(2 * titles.size())
                + "  document.body.dispatchEvent("
                + "    new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true }));"
                + "  if (now() === 'What would you throw?') { asked += 1; } }"
                + "return asked;");
    long own = titles.stream().filter(t -> t.startsWith("Right of East throws ")).count();
    assertThat(own).isGreaterThan(3);
    assertThat(asked).isEqualTo(own);
    assertThat(find("main").getText()).contains("The end");
  }

  /** The link follows the steps; opened elsewhere, it shows the same. */
  @Test
  void link_keptUpToDate_opensWhereItWasTaken() {
    open("", 1280);
    browser.press(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    browser.driver().findElement(By.xpath("//option[.='left of East']")).click();
    String link = (String) browser.run("return location.hash");
    assertThat(link).isEqualTo("#step=3&seat=3");
    List<String> before = tiles(3);
    open(link, 1280);
    assertThat(now()).isEqualTo(titles.get(2));
    assertThat(find(".own").getDomAttribute("data-seat")).isEqualTo("3");
    assertThat(tiles(3)).isEqualTo(before);
    browser.run("location.hash = '#step=12&seat=2'");
    assertThat(now()).isEqualTo(titles.get(11));
    assertThat(find(".own").getDomAttribute("data-seat")).isEqualTo("2");
    browser.driver().findElement(By.linkText(titles.get(20))).click();
    assertThat((String) browser.run("return location.hash"))
        .startsWith("#step=")
        .endsWith("&seat=2");
  }

  /** A link that somebody spoiled opens the game all the same. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "#step=0",
        "#step=-3&seat=1",
        "#step=1e2",
        "#seat=2",
        "#step=5&seat=9",
        "#step=%3Cb%3E&seat=1",
        "#=&&==",
        "#step=5&constructor=1&__proto__=2"
      })
  void link_spoiled_opensTheGame(String link) {
    open(link, 1280);
    assertThat(all(".seat")).hasSize(4);
    assertThat(now()).isIn(titles);
    assertThat(browser.console()).isEmpty();
  }

  /** The table alone fills the screen: nothing sticks out, and own tiles are as large as can be. */
  @ParameterizedTest
  @ValueSource(ints = {1280, 1920})
  void projector_fillsTheScreen(int width) {
    for (int step : List.of(1, titles.size() / 2, titles.size())) {
      open("#step=" + step + "&seat=0&view=projector", width);
      Long height = (Long) browser.run("return innerHeight");
      Rectangle table = find(".stage").getRect();
      assertThat(table.width).isGreaterThan(width * 95 / 100);
      assertThat((long) table.y + table.height).isLessThanOrEqualTo(height);
      assertThat(farthest("bottom")).isLessThanOrEqualTo(height);
      assertThat(farthest("right")).isLessThanOrEqualTo(width);
      Rectangle tile = find(".own .rack .tile").getRect();
      assertThat(tile.height).isGreaterThan((int) (height / 9));
      assertThat(find("main").getText()).doesNotContain("aims at", "Keys:");
    }
  }

  /** How far the tiles and texts of the table reach, in whole pixels. */
  private static long farthest(String side) {
    return (Long)
        browser.run(
            "return Math.round(Math.max.apply(null,"
                + " Array.from(document.querySelectorAll('.stage .tile, .stage p')).map("
                + "function (one) { return one.getBoundingClientRect()."
                + side
                + "; })));");
  }

  @Test
  void projector_byKeyAndButton_comesAndGoes() {
    open("", 1280);
    browser.press("p");
    assertThat(browser.driver().findElements(By.cssSelector("body.projector"))).hasSize(1);
    assertThat((String) browser.run("return location.hash")).contains("view=projector");
    button("Leave").click();
    assertThat(browser.driver().findElements(By.cssSelector("body.projector"))).isEmpty();
    button("Projector").click();
    new Actions(browser.driver()).sendKeys(Keys.ESCAPE).perform();
    assertThat(browser.driver().findElements(By.cssSelector("body.projector"))).isEmpty();
  }

  /** On paper: one sheet, whatever is shown, without a word of keys. */
  @ParameterizedTest
  @ValueSource(
      strings = {"", "#step=60&seat=2", "#step=9&seat=1&quiz=on", "#step=70&seat=1&quiz=on"})
  void page_printed_isOneSheet(String link) {
    open(link, 1280);
    assertThat(browser.sheets()).isEqualTo(1);
    browser.press(Keys.END);
    assertThat(browser.sheets()).isEqualTo(1);
  }

  @Test
  void longGame_printed_isOneSheet() {
    Path random = game(11, "random-legal,random-legal,random-legal,random-legal");
    browser.open(random, 1280);
    assertThat(all(".course > li")).hasSizeGreaterThan(190);
    browser.press(Keys.END);
    assertThat(browser.sheets()).isEqualTo(1);
  }

  /** What is asked is not given away on paper, and no hint for the screen is printed. */
  @Test
  void question_printed_doesNotTellTheAnswer() {
    int step = question("Right of East");
    open("#step=" + step + "&seat=1&quiz=on", 1280);
    browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
    try {
      String paper = find("main").getText();
      assertThat(paper).contains("What would you throw?", titles.get(step - 3));
      assertThat(paper).doesNotContain(titles.get(step - 1) + "\n", "Keys", "Forward", "collects");
    } finally {
      browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
    }
  }

  /** The step of a discard after some play, from 1. */
  private static int question(String who) {
    List<String> own = titles.stream().filter(t -> t.startsWith(who + " throws ")).toList();
    return titles.indexOf(own.get(3)) + 1;
  }

  private static void open(String link, int width) {
    browser.open(page, link, width);
  }

  private static int exposed(int seat) {
    return symbols(seat(seat).findElement(By.className("exposures"))).size();
  }

  private static String now() {
    return find(".now").getText();
  }

  private static WebElement seat(int number) {
    return find(".seat[data-seat='" + number + "']");
  }

  private static List<String> tiles(int seat) {
    return symbols(seat(seat).findElement(By.className("rack")));
  }

  private static List<String> symbols(WebElement place) {
    return place.findElements(By.cssSelector(".tile")).stream()
        .map(tile -> tile.getDomAttribute("data-tile"))
        .toList();
  }

  private static WebElement button(String text) {
    return browser.driver().findElement(By.xpath("//button[text()='" + text + "']"));
  }

  private static WebElement find(String query) {
    return browser.driver().findElement(By.cssSelector(query));
  }

  private static List<WebElement> all(String query) {
    return browser.driver().findElements(By.cssSelector(query));
  }
}
