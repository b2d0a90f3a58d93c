package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.tile.Tile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A game as a page: what its steps hold, checked against the record of the same game. */
class GamePageTest {
  private static final int TILES = 152;
  private static final Pattern MOMENT = Pattern.compile("data-moment=\"([^\"]*)\"");
  private static final Pattern GAME = Pattern.compile("data-game=\"([^\"]*)\"");
  private static final Pattern TITLE = Pattern.compile("class=\"title\"[^>]*>([^<]*)<");
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  @TempDir private Path folder;
  private String card;
  private Path page;
  private Path record;

  @BeforeEach
  void name() {
    card = Cards.small(folder);
    page = folder.resolve("game.html");
    record = folder.resolve("game.jsonl");
  }

  private Typed play(int seed, String players, String... more) {
    List<String> words =
        new ArrayList<>(
            List.of("game", "--card", card, "--seed", "" + seed, "--deal", "0", "--players"));
    words.add(players);
    words.addAll(List.of("--html", page.toString(), "--record", record.toString()));
    words.addAll(List.of(more));
    return Typed.run(words.toArray(String[]::new));
  }

  /** In every step the tiles on racks, in exposures, thrown and in the wall are all there are. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void tiles_inEveryStep_areAllThereAre(int seed) throws IOException {
    assertThat(play(seed, "nearest,reckoner,watchful,nearest").code()).isZero();
    JsonNode thrown = whole().get("thrown");
    List<JsonNode> moments = moments();
    assertThat(moments).hasSizeGreaterThan(20);
    for (int step = 0; step < moments.size(); step++) {
      JsonNode moment = moments.get(step);
      long count = moment.get("left").asLong();
      for (JsonNode seat : moment.get("seats")) {
        count += words(seat.get("rack").asString());
        for (JsonNode group : seat.path("open")) {
          count += words(group.asString());
        }
      }
      for (int at = 0; at < moment.get("thrown").asInt(); at++) {
        long called = thrown.get(at).get(2).asLong();
        count += called >= 0 && called <= step ? 0 : 1;
      }
      assertThat(count).as("step %d", step).isEqualTo(TILES);
    }
  }

  @Test
  void discards_ofThePage_areThoseOfTheRecordInOrder() throws IOException {
    play(3, "nearest,reckoner,watchful,nearest");
    List<String> recorded = new ArrayList<>();
    for (JsonNode event : MAPPER.readTree(Files.readString(record)).get("events")) {
      if (event.get("event").asString().equals("discard")) {
        recorded.add(event.get("tile").asString() + " by " + event.get("seat").asInt());
      }
    }
    List<String> shown = new ArrayList<>();
    whole().get("thrown").forEach(one -> shown.add(one.get(0).asString() + " by " + one.get(1)));
    assertThat(shown).isNotEmpty().isEqualTo(recorded);
  }

  /** A title says what the whole table hears: no tile that was drawn, none that was passed. */
  @Test
  void titles_ofSteps_keepWhatOnlyOnePlayerSees() throws IOException {
    play(3, "nearest,reckoner,watchful,nearest");
    List<String> titles = titles();
    assertThat(titles).startsWith("The deal", "First right", "First across", "First left");
    assertThat(titles.stream().filter(title -> title.contains("draws")))
        .isNotEmpty()
        .allMatch(title -> title.endsWith(" draws"));
    assertThat(titles.get(titles.size() - 1)).startsWith("The end: ");
    JsonNode points = moments().get(titles.size() - 1).get("points");
    assertThat(points).hasSize(4);
    JsonNode recorded = MAPPER.readTree(Files.readString(record)).get("end").get("points");
    assertThat(points).isEqualTo(recorded);
  }

  @Test
  void players_whoGiveReasons_areHeardBesideTheirChoices() throws IOException {
    play(3, "nearest,reckoner,watchful,nearest");
    Set<String> why = new TreeSet<>();
    Set<String> aims = new TreeSet<>();
    for (JsonNode moment : moments()) {
      for (JsonNode seat : moment.get("seats")) {
        seat.path("why").forEach(one -> why.add(one.asString()));
        seat.optional("aim").ifPresent(aim -> aims.add(aim.asString()));
      }
    }
    moments().get(0).get("seats").forEach(seat -> assertThat(seat.has("aim")).isTrue());
    assertThat(aims)
        .allMatch(aim -> aim.matches("(aims at|nearest:|no line).*"))
        .anyMatch(aim -> aim.startsWith("aims at Ladders L"));
    assertThat(why)
        .anyMatch(reason -> reason.startsWith("lets it go: "))
        .anyMatch(reason -> reason.startsWith("why: "))
        .anyMatch(reason -> reason.matches("throws [1-9NEWSRG0FJ][bcd]?: .*"))
        .allMatch(reason -> reason.matches("(lets it go|why|throws [1-9NEWSRG0FJ][bcd]?): .+"))
        .noneMatch(reason -> reason.contains("heading for"));
  }

  /** Who lets a discard go is heard when it is thrown, not later. */
  @Test
  void reasons_toLetADiscardGo_standBesideThatDiscard() throws IOException {
    play(3, "nearest,reckoner,watchful,nearest");
    List<String> titles = titles();
    List<JsonNode> moments = moments();
    int heard = 0;
    for (int step = 0; step < moments.size(); step++) {
      if (moments.get(step).get("seats").toString().contains("lets it go: ")) {
        assertThat(titles.get(step)).contains(" throws ");
        heard++;
      }
    }
    assertThat(heard).isPositive();
  }

  /** Players who would play otherwise today are not asked what they aimed at then. */
  @Test
  void page_ofAGameThatWouldGoOtherwise_doesNotSayWhatWasAimedAt() throws IOException {
    play(5, "nearest,nearest,nearest,nearest");
    String other = Files.readString(record).replace("\"nearest\",", "\"random-legal\",");
    assertThat(other).contains("random-legal");
    Files.writeString(record, other);
    Path shown = folder.resolve("shown.html");
    Typed.run("replay", record.toString(), "--card", card, "--html", shown.toString());
    assertThat(Files.readString(shown)).contains("nearest: ").doesNotContain("aims at");
  }

  @Test
  void page_ofARecord_isThatOfTheGameItself() throws IOException {
    play(5, "nearest,reckoner,watchful,nearest");
    Path again = folder.resolve("again.html");
    Typed typed =
        Typed.run("replay", record.toString(), "--card", card, "--html", again.toString());
    assertThat(typed.code()).isZero();
    assertThat(again).hasSameTextualContentAs(page);
  }

  /** A record by players whom this program does not know is shown all the same. */
  @Test
  void page_ofUnknownPlayers_showsTheNearestLinesInstead() throws IOException {
    play(5, "nearest,nearest,nearest,nearest");
    String strange =
        Files.readString(record)
            .replace(
                "[\"nearest\",\"nearest\",\"nearest\",\"nearest\"]",
                "[\"aunt\",\"nearest\",\"<b>uncle</b>\",\"nearest\"]");
    assertThat(strange).contains("aunt");
    Files.writeString(record, strange);
    Path other = folder.resolve("other.html");
    Typed.run("replay", record.toString(), "--card", card, "--html", other.toString());
    assertThat(Files.readString(other)).contains("nearest: ").doesNotContain("aims at", "<b>uncle");
  }

  @Test
  void names_ofPlayers_standAsText() throws IOException {
    play(2, "nearest,nearest,nearest,nearest", "--names", "<script>x</script>,B&B,\"C\",D");
    assertThat(Files.readString(page)).doesNotContain("<script>x").contains("&lt;script&gt;x");
    assertThat(whole().get("names").get(0).asString()).isEqualTo("<script>x</script>");
  }

  /** A page says that it is there, and the game is not narrated besides. */
  @Test
  void page_written_isNamedAndNothingElseIsSaid() throws IOException {
    assertThat(play(1, "nearest,nearest,nearest,nearest").out()).isEqualTo("Wrote " + page + "\n");
    Typed again = Typed.run("replay", record.toString(), "--card", card, "--html", page.toString());
    assertThat(again.out()).isEqualTo("Wrote " + page + "\n1 game agrees with the rules\n");
  }

  /** An older page of a game makes room for a new one. */
  @Test
  void page_thatIsThere_isReplaced() throws IOException {
    play(1, "nearest,nearest,nearest,nearest");
    String first = Files.readString(page);
    Files.delete(record);
    assertThat(play(2, "nearest,nearest,nearest,nearest").code()).isZero();
    assertThat(Files.readString(page)).isNotEqualTo(first).contains("seed 2");
  }

  /** Whatever else is there stays, even if it holds the words by which a page is known. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "mine",
        "",
        "<title>x</title><meta name=\"generator\" content=\"Tallywall, page of a game\">"
      })
  void file_thatIsNoPage_isNotOverwritten(String text) throws IOException {
    Files.writeString(page, text);
    Typed typed = play(1, "nearest,nearest,nearest,nearest");
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("game.html", "is not the page of a game");
    assertThat(page).hasContent(text);
    assertThat(record).doesNotExist();
  }

  /** Not through a link either: it may lead anywhere. */
  @Test
  void link_toAPage_isNotFollowed() throws IOException {
    play(1, "nearest,nearest,nearest,nearest");
    Path real = folder.resolve("real.html");
    Files.move(page, real);
    Files.delete(record);
    Files.createSymbolicLink(page, real);
    String before = Files.readString(real);
    assertThat(play(2, "nearest,nearest,nearest,nearest").code()).isEqualTo(2);
    assertThat(real).hasContent(before);
  }

  @Test
  void page_andRecordOfOneName_areRefused() {
    Typed typed =
        Typed.run(
            "game",
            "--card",
            card,
            "--seed",
            "1",
            "--deal",
            "0",
            "--players",
            "nearest,nearest,nearest,nearest",
            "--html",
            "a.html",
            "--record",
            "a.html");
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("the same file");
  }

  /** Every tile that lies anywhere has its drawing, and no two drawings are alike. */
  @Test
  void tiles_haveADrawingEach() throws IOException {
    play(1, "nearest,nearest,nearest,nearest");
    Matcher found =
        Pattern.compile("<symbol id=\"tile-([^\"]*)\"[^>]*>(.*?)</symbol>", Pattern.DOTALL)
            .matcher(Files.readString(page));
    Map<String, String> drawings = new TreeMap<>();
    while (found.find()) {
      drawings.put(found.group(1), found.group(2));
    }
    assertThat(drawings).hasSize(Tile.KINDS + 1).containsKey("back");
    assertThat(drawings.values()).doesNotHaveDuplicates();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      assertThat(drawings.get(Tile.symbol(kind))).contains(">" + Tile.symbol(kind).charAt(0) + "<");
    }
  }

  /** The end stands on the page as it is, not behind a fold. */
  @Test
  void end_ofTheGame_isNotFolded() throws IOException {
    play(3, "nearest,reckoner,watchful,nearest");
    String text = Files.readString(page);
    String ending = text.substring(text.indexOf("class=\"ending\""));
    assertThat(text.substring(0, text.indexOf("class=\"ending\""))).doesNotContain("<details");
    assertThat(ending.substring(0, ending.indexOf("</section>")))
        .contains("<h2>The end</h2>")
        .containsPattern("(collects|wall game|void)");
  }

  @Test
  void replay_ofAGameThatIsNotThere_saysHowManyThereAre() {
    play(1, "nearest,nearest,nearest,nearest");
    String other = folder.resolve("other.html").toString();
    Typed typed =
        Typed.run("replay", record.toString(), "--card", card, "--game", "7", "--html", other);
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("holds no game 7; it has 1 game");
    assertThat(Typed.run("replay", record.toString(), "--card", card, "--game", "0").err())
        .contains("write --html");
  }

  private List<JsonNode> moments() throws IOException {
    List<JsonNode> moments = new ArrayList<>();
    Matcher found = MOMENT.matcher(Files.readString(page));
    while (found.find()) {
      moments.add(MAPPER.readTree(plain(found.group(1))));
    }
    return moments;
  }

  private JsonNode whole() throws IOException {
    Matcher found = GAME.matcher(Files.readString(page));
    assertThat(found.find()).isTrue();
    return MAPPER.readTree(plain(found.group(1)));
  }

  private List<String> titles() throws IOException {
    return TITLE.matcher(Files.readString(page)).results().map(one -> one.group(1)).toList();
  }

  private static String plain(String attribute) {
    return attribute
        .replace("&#34;", "\"")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&");
  }

  private static int words(String text) {
    return text.isEmpty() ? 0 : text.split(" ").length;
  }
}
