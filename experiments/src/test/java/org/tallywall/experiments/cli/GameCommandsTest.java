package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Single games told aloud, records checked again, and the list of players. */
class GameCommandsTest {
  private static final String STUDY =
      """
      { "study": "harbour-look", "card": "small.json", "seed": 5,
        "table": ["nearest", "nearest", "random-legal", "nearest"],
        "deals": 40, "records": 40 }
      """;

  @TempDir Path folder;

  private String card;
  private String study;

  @BeforeEach
  void write() {
    card = Cards.small(folder);
    study = Cards.write(folder, "study.json", STUDY);
  }

  private Typed game(String... more) {
    String[] words = {
      "game",
      "--card",
      card,
      "--seed",
      "5",
      "--deal",
      "3",
      "--players",
      "nearest,nearest,random-legal,nearest"
    };
    String[] all = java.util.Arrays.copyOf(words, words.length + more.length);
    System.arraycopy(more, 0, all, words.length, more.length);
    return Typed.run(all);
  }

  @Test
  void game_ofWords_isToldFromDealToPayments() {
    Typed typed = game();

    assertThat(typed.code()).isZero();
    assertThat(typed.err()).isEmpty();
    assertThat(typed.out())
        .startsWith("Deal 3, seed 5, Little Harbour test card\n  East: nearest\n")
        .contains("across from East: random-legal", "The deal\n", "First right\n", "Courtesy\n")
        .contains("After the Charleston\n", "Play\n  99  East throws ", "The end\n");
    assertThat(typed.out().lines()).allMatch(line -> line.length() <= 100);
  }

  @Test
  void game_spokenWithNames_usesTheWordsOfTheTable() {
    Typed typed = game("--spoken", "--names", "Ann, Bea,Cleo,Dot");

    assertThat(typed.out())
        .contains("Cleo: random-legal", "Ann holds ", " to Bea.")
        .containsPattern("(one|two|three|four|five|six|seven|eight|nine) (bam|crak|dot)")
        .doesNotContain("East");
  }

  @Test
  void game_ofStudy_isThatOfItsRecords() throws IOException {
    String out = folder.resolve("out").toString();
    Typed.run("run", study, "--out", out, "--without-report");
    Map<String, String> files = RunCommandTest.files(Path.of(out));
    String record = folder.resolve("one.jsonl").toString();

    Typed typed = Typed.run("game", "--study", study, "--deal", "17", "--record", record);

    assertThat(typed.code()).isZero();
    assertThat(Files.readString(Path.of(record)).strip())
        .isEqualTo(files.get("records.jsonl.gz").lines().toList().get(17));
  }

  @Test
  void game_wrongInput_isExplained() {
    assertComplains(Typed.run("game", "--study", study), "--deal is missing");
    assertComplains(
        Typed.run("game", "--deal", "1"), "missing: --card FILE, --seed NUMBER, --players");
    assertComplains(game("--study", study), "leave out --card, --rules, --seed and --players");
    assertComplains(game("--arm", "bold"), "belong to --study");
    assertComplains(
        Typed.run("game", "--study", study, "--deal", "1", "--arm", "bold"), "no ways of playing");
    assertComplains(game("--names", "Ann,Bea"), "takes four names");
    assertComplains(game("--record", card), "exists already");
    assertComplains(
        Typed.run("game", "--card", card, "--seed", "5", "--deal", "3", "--players", "nearest"),
        "takes four players");
    assertComplains(
        Typed.run(
            "game",
            "--card",
            card,
            "--seed",
            "5",
            "--deal",
            "3",
            "--players",
            "nearest,nearest,neerest,nearest"),
        "did you mean \"nearest\"?");
    assertComplains(Typed.run("game", "--study", study, "--deal", "-1"), "whole number");
  }

  @Test
  void replay_recordsOfARun_agreeOnTheCardBesideThem() {
    String out = folder.resolve("out").toString();
    Typed.run("run", study, "--out", out, "--without-report");

    Typed typed = Typed.run("replay", out + "/records.jsonl.gz");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).isEqualTo("40 games agree with the rules\n");
  }

  @Test
  void replay_changedRecord_namesTheFirstBreach() throws IOException {
    Path record = folder.resolve("game.jsonl");
    game("--record", record.toString());
    String good = Files.readString(record);
    String drawn =
        good.replaceAll("(?s).*?\"event\":\"draw\",\"seat\":1,\"tile\":\"(..?)\".*", "$1");
    String changed =
        good.replaceFirst(
            "(\"event\":\"draw\",\"seat\":1,\"tile\":\")" + drawn + "\"",
            "$1" + (drawn.equals("N") ? "S" : "N") + "\"");
    Files.writeString(record, good + changed);

    Typed typed = Typed.run("replay", record.toString(), "--card", card);

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out())
        .startsWith("game 0 (deal 3), event ")
        .endsWith("1 game before it agrees with the rules\n");
  }

  @Test
  void replay_wrongInput_isExplained() throws IOException {
    Path record = folder.resolve("deep/game.jsonl");
    Files.createDirectory(record.getParent());
    game("--record", record.toString());
    String other =
        Cards.write(folder, "other.json", Cards.SMALL.replace("\"value\": 50", "\"value\": 55"));
    Path packed = folder.resolve("broken.jsonl.gz");
    try (GZIPOutputStream out = new GZIPOutputStream(Files.newOutputStream(packed))) {
      out.write(Files.readAllBytes(record));
    }
    byte[] bytes = Files.readAllBytes(packed);
    Files.write(packed, java.util.Arrays.copyOf(bytes, bytes.length / 2));

    assertComplains(Typed.run("replay", "none.jsonl"), "there is no file");
    assertComplains(Typed.run("replay", folder.toString()), "is a folder");
    assertComplains(Typed.run("replay", record.toString()), "name the card with --card");
    assertComplains(Typed.run("replay", record.toString(), "--card", other), "another card");
    assertComplains(Typed.run("replay", packed.toString(), "--card", card), "it breaks off");
    assertComplains(
        Typed.run("replay", Cards.write(folder, "x.jsonl.gz", "{}"), "--card", card), "gzip");
    assertComplains(
        Typed.run("replay", Cards.write(folder, "x.jsonl", "{}\n"), "--card", card), "x.jsonl");
    assertComplains(
        Typed.run("replay", Cards.write(folder, "no.jsonl", "\n"), "--card", card), "no games");
  }

  private static void assertComplains(Typed typed, String words) {
    assertThat(typed.err()).contains(words).doesNotContain("Exception", "java.");
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
  }

  @Test
  void players_list_namesEachWithItsDescription() {
    Typed typed = Typed.run("players");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("random-legal  plays any legal move", "\nnearest       heads");
  }

  @Test
  void players_oneName_listsItAlone() {
    assertThat(Typed.run("players", "nearest").out())
        .startsWith("nearest\n")
        .endsWith("    no settings\n")
        .doesNotContain("random-legal");
    assertComplains(Typed.run("players", "neerest"), "did you mean \"nearest\"?");
  }

  @Test
  void invent_toANewFile_isAGoodCard() {
    String out = folder.resolve("invented.json").toString();

    Typed typed = Typed.run("card", "invent", "--lines", "13", "--seed", "4", "--out", out);

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).startsWith("wrote " + out + ": 13 lines, ");
    assertThat(Typed.run("card", "check", out).out()).startsWith("ok: \"Practice card\"");
    assertComplains(Typed.run("card", "invent", "--out", out), "exists already");
    String sheet = folder.resolve("quay.csv").toString();
    assertThat(Typed.run("card", "invent", "--lines", "13", "--seed", "4", "--out", sheet).code())
        .isZero();
    assertThat(Typed.run("card", "check", sheet).out()).startsWith("ok: \"quay\"");
    assertThat(Typed.run("card", "compare", sheet, out).code()).isZero();
    assertComplains(
        Typed.run("card", "invent", "--name", "Quay", "--out", sheet + "/b.csv"),
        "is called like its file; leave --name out");
    assertComplains(Typed.run("card", "invent", "--lines", "9"), "10 to 70 lines, not 9");
    assertComplains(Typed.run("card", "invent", "--name", " "), "the name is empty");
    assertThat(Typed.run("card", "invent", "--out", out + "/a").code()).isEqualTo(1);
  }
}
