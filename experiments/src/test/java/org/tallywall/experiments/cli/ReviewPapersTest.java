package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reviews on paper: of sheets, and of one player's decisions of a game. */
class ReviewPapersTest {
  private static final String SCENE = "scenes/heron-reach/redeem-with-the-stranger.txt";
  private static final String OTHER = "scenes/heron-reach/pass-the-strangers.txt";
  private static final String CARD = "cards/saltmarsh-quay.json";

  @TempDir Path folder;

  private String in(String name) {
    return folder.resolve(name).toString();
  }

  private static Typed review(String... words) {
    List<String> all = new ArrayList<>(List.of("review", "--players", "nearest"));
    all.addAll(Arrays.asList(words));
    return Typed.run(all.toArray(new String[0]));
  }

  private static String good(Typed typed) {
    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    return typed.out();
  }

  private String record() {
    String record = in("one.jsonl");
    if (!Files.exists(Path.of(record))) {
      good(
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
              record));
    }
    return record;
  }

  /** The page has the position, the verdict of the console, its table, and the sheet again. */
  @Test
  void page_saysWhatTheConsoleSays() throws IOException {
    String said = good(review(SCENE, "--playouts", "300", "--html", in("one.html")));
    String page = Files.readString(Path.of(in("one.html")));

    assertThat(said).endsWith("Wrote " + in("one.html") + "\n");
    assertThat(page)
        .contains("content=\"Tallywall, page of a review\"", "<h1>redeem-with-the-stranger</h1>")
        .contains("href=\"#tile-8c\"", "Rack: five bam")
        .contains("The position as a sheet", "exposed  2 888cJ")
        .contains("nearest, nearest, nearest, nearest");
    String headline = said.substring(said.indexOf("\n\n") + 2).split("\n\n")[0];
    assertThat(page).contains(headline.replaceAll("\\s+", " ").substring(0, 40));
    good(review(SCENE, "--playouts", "300", "--html", in("one.html"), "--seed", "2"));
    assertThat(Files.readString(Path.of(in("one.html")))).isNotEqualTo(page);
  }

  /** The same seed and number of games give the same bytes with any number of threads. */
  @Test
  @Tag("long")
  void papers_areTheSameBytesForAnyNumberOfThreads() throws IOException {
    for (String threads : List.of("1", "2")) {
      Path there = Files.createDirectory(folder.resolve(threads));
      String[] words = {
        SCENE,
        OTHER,
        "--playouts",
        "300",
        "--threads",
        threads,
        "--html",
        there.resolve("two.html").toString(),
        "--md",
        there.resolve("two.md").toString()
      };
      good(review(words));
    }
    for (String file : List.of("two.html", "two.md", "two-choices-1.svg", "two-choices-2.svg")) {
      assertThat(folder.resolve("1").resolve(file))
          .hasSameBinaryContentAs(folder.resolve("2").resolve(file));
    }
    assertThat(Files.readString(folder.resolve("1/two.md")))
        .startsWith("# Positions reviewed\n")
        .contains("- redeem-with-the-stranger\n- pass-the-strangers\n")
        .contains("](<two-choices-1.svg>)", "## pass-the-strangers\n")
        .contains("Seat 1 (right of East). First right: which three tiles to pass?");
  }

  @Test
  void message_isThreeSentences() {
    String said = good(review(SCENE, "--playouts", "400", "--short"));

    String text = said.replaceAll("\\s+", " ").strip();
    assertThat(text.split("(?<=[.:]) (?=[A-Z])|(?<=\\.) ")).hasSize(3);
    assertThat(text)
        .contains("of 100 games and throws the winning tile in ")
        .endsWith(
            "four programmed players of the kind \"nearest\" on the card “Heron Reach scene card”:"
                + " it says nothing about people or stakes.");
  }

  @Test
  void files_thatAreThere_areNotWrittenOver() throws IOException {
    Files.writeString(Path.of(in("mine.html")), "<title>my own</title>");
    Files.writeString(Path.of(in("mine.md")), "my own");

    assertThat(refused(SCENE, "--html", in("mine.html")))
        .endsWith("exists already and is not the page of a review; name another file\n");
    assertThat(refused(SCENE, "--md", in("mine.md"))).contains("exists already; name a new file");
    assertThat(refused(SCENE, "--md", in("mine.txt"))).contains("a name that ends in .md");
    assertThat(Files.readString(Path.of(in("mine.md")))).isEqualTo("my own");
  }

  private static String refused(String... words) {
    Typed typed = review(words);
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    return typed.err();
  }

  /** The same on the console and on paper, with any number of threads. */
  @Test
  @Tag("long")
  void game_isGoneThrough_andThePageSaysItWhereItHappened() throws IOException {
    String[] words = {record(), "--card", CARD, "--game", "0", "--seat", "0", "--playouts", "6000"};
    String said = good(review(words));
    List<String> more = new ArrayList<>(Arrays.asList(words));
    more.addAll(List.of("--threads", "1", "--html", in("game.html")));
    String again = good(review(more.toArray(new String[0])));
    String page = Files.readString(Path.of(in("game.html")));

    assertThat(again).isEqualTo(said + "Wrote " + in("game.html") + "\n");
    assertThat(said.replaceAll("\\s+", " "))
        .startsWith("Of ")
        .contains("decisions by East, five were looked at closely; ")
        .contains("The dearest of many looks dearer than it is");
    assertThat(page)
        .contains("content=\"Tallywall, page of a review\"", "<caption")
        .containsPattern("href=\"#step=\\d+&amp;seat=0&amp;racks=own\"")
        .contains("by the review, ");
  }

  @Test
  void game_wrongInput_isRefusedInASentence() {
    String record = record();
    assertThat(refused(record, "--card", CARD, "--game", "7")).contains("holds no game 7");
    assertThat(refused(record, "--card", CARD, "--game", "0"))
        .contains("write whose decisions to go through: --seat and 0 (East) to 3");
    assertThat(refused(record, "--card", CARD, "--game", "0", "--seat", "5"))
        .contains("--seat takes a seat from 0 (East) to 3, not 5");
    assertThat(refused(record, "--game", "0", "--seat", "1")).contains("name the card with --card");
    assertThat(refused(in("no.jsonl"), "--card", CARD, "--game", "0", "--seat", "1"))
        .endsWith("no.jsonl\"; check its name and folder\n");
    assertThat(refused(SCENE, "--seat", "1")).contains("--seat belongs to --game");
    assertThat(refused(record, "--card", CARD, "--game", "0", "--seat", "1", "--short"))
        .contains("belong to sheets");
    assertThat(refused(record, "--card", CARD, "--game", "0", "--seat", "1", "--playouts", "50"))
        .contains("games at least");
    assertThat(
            refused(record, "--card", "scenes/heron-reach/card.json", "--game", "0", "--seat", "1"))
        .contains("played on another card");
    assertThat(refused(SCENE, "--card", CARD, "--game", "0", "--seat", "1")).isNotEmpty();
    assertThat(Typed.run("review").err()).contains("tallywall review --new turn prints one");
  }
}
