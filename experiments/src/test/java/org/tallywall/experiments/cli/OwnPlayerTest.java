package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example of a user's own player, built and played as its README says. */
class OwnPlayerTest {
  private static final Path EXAMPLE = Path.of("../strategies/examples/suit-keeper");
  private static final String CLASS = "example.suitkeeper.SuitKeeper";
  private static final String STUDY =
      """
      { "study": "one-suit", "card": "small.json", "seed": 5,
        "arms": {
          "usual": "nearest",
          "thin": { "player": "jar:jars/suit-keeper.jar!suit-keeper",
                    "passes": { "thin-at-most": 5 } },
          "plain": "jar:jars/suit-keeper.jar!example.suitkeeper.SuitKeeper" },
        "baseline": "usual", "others": "nearest", "primary": "points",
        "deals": 600, "records": 3 }
      """;

  @TempDir static Path built;
  private static Map<String, byte[]> classes;

  @TempDir Path folder;

  private Path jar;
  private String study;

  @BeforeAll
  static void build() throws IOException {
    classes = new TreeMap<>(Jars.compiled(EXAMPLE.resolve("src"), built));
    classes.put(Jars.LIST, Files.readAllBytes(EXAMPLE.resolve("src").resolve(Jars.LIST)));
  }

  @BeforeEach
  void write() throws IOException {
    Cards.small(folder);
    jar =
        Jars.write(
            Files.createDirectory(folder.resolve("jars")).resolve("suit-keeper.jar"), classes, 0);
    study = Cards.write(folder, "study.json", STUDY);
  }

  private String out(String name) {
    return folder.resolve(name).toString();
  }

  private Typed run(String out, String... more) {
    String[] words = {"run", study, "--out", out};
    String[] all = java.util.Arrays.copyOf(words, words.length + more.length);
    System.arraycopy(more, 0, all, words.length, more.length);
    return Typed.run(all);
  }

  @Test
  @Tag("long")
  void study_givesTheSameBytesWithOneThreadAndTwo() throws IOException {
    assertThat(run(out("one"), "--threads", "1")).extracting(Typed::code).isEqualTo(0);
    assertThat(run(out("two"), "--threads", "2")).extracting(Typed::code).isEqualTo(0);

    Map<String, String> one = RunCommandTest.files(Path.of(out("one")));
    Map<String, String> two = RunCommandTest.files(Path.of(out("two")));
    String manifest = one.remove("manifest.json");
    two.remove("manifest.json");
    assertThat(two).isEqualTo(one);
    assertThat(manifest).containsPattern("\"jars\" : \\{\\s*\"suit-keeper.jar\" : \"sha256:");
    assertThat(one.get("study.json"))
        .contains(
            "\"player\" : \"jar:../jars/suit-keeper.jar!suit-keeper\"",
            "\"passes.thin-at-most\" : 5",
            "\"passes.keep-pairs\" : true",
            "\"plain\" : \"jar:../jars/suit-keeper.jar!" + CLASS + "\"");
    assertThat(one.get("differences.csv")).contains("thin", "plain");
    assertThat(one.get("records.jsonl.gz"))
        .contains("\"player\":\"suit-keeper\"", "\"jar:suit-keeper.jar!" + CLASS + "\"");
    assertThat(one.get("games/game-12.html")).contains("suit-keeper").contains("aims at");
  }

  /** The class alone plays with the usual settings of the list; and a habit that never applies. */
  @Test
  @Tag("long")
  void players_differByTheirSettingsAlone() throws IOException {
    String alike =
        STUDY
            .replace("\"passes\": { \"thin-at-most\": 5 }", "\"passes\": { \"thin-at-most\": 4 }")
            .replace(
                "\"usual\": \"nearest\"", "\"usual\": \"jar:jars/suit-keeper.jar!suit-keeper\"");
    study = Cards.write(folder, "alike.json", alike);
    assertThat(run(out("alike"), "--without-report").code()).isZero();
    String rates = RunCommandTest.files(Path.of(out("alike"))).get("win-rates.csv");
    String usual = rates.lines().filter(row -> row.startsWith("usual,")).findFirst().orElseThrow();
    for (String arm : new String[] {"thin", "plain"}) {
      String row = rates.lines().filter(r -> r.startsWith(arm + ",")).findFirst().orElseThrow();
      assertThat(numbers(row)).isEqualTo(numbers(usual));
    }

    study = Cards.write(folder, "study.json", STUDY);
    assertThat(run(out("apart"), "--without-report").code()).isZero();
    String apart = RunCommandTest.files(Path.of(out("apart"))).get("win-rates.csv");
    assertThat(apart.lines().map(OwnPlayerTest::numbers).distinct()).hasSizeGreaterThan(3);
  }

  /** What stands behind the names of the way of playing and the player. */
  private static String numbers(String row) {
    return row.replaceFirst("^[^,]*,(all|[0-9]*),[^,]*,", "");
  }

  @Test
  @Tag("long")
  void anotherJar_isNoticedByResumeAndVerify_aRepackedOneIsNot() {
    assertThat(run(out("there"), "--without-report").code()).isZero();
    assertThat(Typed.run("verify", out("there"), "--trust-jars").out()).contains("2 of 2 blocks");

    Jars.write(jar, classes, 1_000_000_000_000L);
    assertThat(Typed.run("verify", out("there"), "--trust-jars").code()).isZero();
    assertThat(run(out("there"), "--on-existing", "resume").code()).isZero();

    Map<String, byte[]> other = new TreeMap<>(classes);
    other.put("notes.txt", "another build".getBytes(StandardCharsets.UTF_8));
    Jars.write(jar, other, 0);
    Typed resumed = run(out("there"), "--on-existing", "resume");
    assertThat(resumed.code()).isEqualTo(Program.WRONG_INPUT);
    assertThat(resumed.err())
        .contains("the jar \"suit-keeper.jar\" holds other players than when it was played");
    Typed verified = Typed.run("verify", out("there"), "--trust-jars");
    assertThat(verified.code()).isEqualTo(Program.WRONG_INPUT);
    assertThat(verified.err()).contains("is not the jar that was played: it has changed");
  }

  @Test
  @Tag("long")
  void missingJar_isNamedWithItsPlaceInTheStudy() throws IOException {
    assertThat(run(out("there"), "--without-report").code()).isZero();
    Files.delete(jar);
    assertThat(run(out("new")).err()).contains("study.json:4:", "there is no jar \"" + jar + "\"");
    assertThat(Typed.run("verify", out("there"), "--trust-jars").err()).contains("there is no jar");
    assertThat(Typed.run("report", out("there")).code()).isZero();
  }

  @Test
  void pluginsFolder_givesItsPlayersToEveryCommand() throws IOException {
    String plugins = folder.resolve("jars").toString();
    assertThat(Typed.run("players", "--plugins", plugins).out())
        .contains("open-tiles", "suit-keeper   heads for the nearest line")
        .contains("from the jar");
    assertThat(Typed.run("players", "suit-keeper", "--plugins", plugins).out())
        .contains("suit-keeper\n    heads for the nearest line")
        .contains("from the jar " + jar)
        .contains("passes.thin-at-most (a whole number from 0 to 6; usually 4)");
    String card = folder.resolve("small.json").toString();
    String record = out("one.jsonl");
    Typed game =
        Typed.run(
            "game",
            "--plugins",
            plugins,
            "--card",
            card,
            "--seed",
            "1",
            "--deal",
            "2",
            "--record",
            record,
            "--players",
            "suit-keeper,nearest,nearest,jar:" + jar + "!" + CLASS);
    assertThat(game.code()).isZero();
    assertThat(game.out()).contains("East: suit-keeper", "jar:suit-keeper.jar!" + CLASS);
    String page = out("page.html");
    assertThat(
            Typed.run("replay", record, "--card", card, "--html", page, "--plugins", plugins).out())
        .contains("1 game agrees with the rules");
    study =
        Cards.write(
            folder,
            "named.json",
            STUDY.replace("jar:jars/suit-keeper.jar!suit-keeper", "suit-keeper"));
    assertThat(run(out("named")).err()).contains("unknown player \"suit-keeper\" (known: ");
    assertThat(run(out("named"), "--plugins", plugins, "--without-report").code()).isZero();
    assertThat(Typed.run("verify", out("named"), "--trust-jars").code()).isZero();
  }

  @Test
  void wrongSettings_areNamedWithTheNearestAndTheRange() {
    study = Cards.write(folder, "wrong.json", STUDY.replace("\"thin-at-most\": 5", "\"thin\": 5"));
    assertThat(run(out("x")).err())
        .contains("no setting \"passes.thin\"; did you mean \"passes.thin-at-most\"?");
    study =
        Cards.write(
            folder, "wrong.json", STUDY.replace("\"thin-at-most\": 5", "\"thin-at-most\": 7"));
    assertThat(run(out("x")).err())
        .contains("\"passes.thin-at-most\" is a whole number from 0 to 6, not 7");
  }
}
