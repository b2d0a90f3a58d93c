package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A game as a page: what its steps hold, checked against the record of the same game. */
class GamePageTest {
  private static final int TILES = 152;
  private static final Pattern MOMENT = Pattern.compile("data-moment=\"([^\"]*)\"");
  private static final Pattern GAME = Pattern.compile("data-game=\"([^\"]*)\"");
  private static final Pattern TITLE = Pattern.compile("class=\"step-title\">([^<]*)<");
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
        for (JsonNode group : seat.get("open")) {
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
    assertThat(titles.get(titles.size() - 1)).startsWith("The end: ").contains("points: ");
  }

  @Test
  void players_whoGiveReasons_areHeardBesideTheirChoices() throws IOException {
    play(3, "nearest,reckoner,watchful,nearest");
    Set<String> why = new TreeSet<>();
    for (JsonNode moment : moments()) {
      moment.get("seats").forEach(seat -> seat.get("why").forEach(one -> why.add(one.asString())));
      for (JsonNode seat : moment.get("seats")) {
        assertThat(seat.get("aim").asString()).matches("(aims at|nearest:|no line).*");
      }
    }
    assertThat(why)
        .anyMatch(reason -> reason.startsWith("lets it lie: "))
        .anyMatch(reason -> reason.contains("heads for"));
  }

  /** Who lets a discard lie is heard when it is thrown, not later. */
  @Test
  void reasons_toLetADiscardLie_standBesideThatDiscard() throws IOException {
    play(3, "nearest,reckoner,watchful,nearest");
    List<String> titles = titles();
    List<JsonNode> moments = moments();
    int heard = 0;
    for (int step = 0; step < moments.size(); step++) {
      if (moments.get(step).get("seats").toString().contains("lets it lie: ")) {
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

  @Test
  void file_thatIsThere_isNotOverwritten() throws IOException {
    Files.writeString(page, "mine");
    Typed typed = play(1, "nearest,nearest,nearest,nearest");
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("game.html", "exists already");
    assertThat(page).hasContent("mine");
    assertThat(record).doesNotExist();
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
