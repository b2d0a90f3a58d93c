package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Players from a jar that do their worst: whatever they throw, and however they try to end or hold
 * up the program, the player and the deal are named and what was played before is kept.
 */
@Tag("long")
class HostilePlayersTest {
  /**
   * A player that plays soundly for some turns and then does what is asked. It remembers how many
   * there were, as no player should, so that other deals are spoiled when a block is played again.
   */
  private static final String PLAYER =
      """
      package evil;
      import org.tallywall.core.play.*;
      import org.tallywall.core.random.RandomStream;
      public class %1$s extends own.Plain {
        int turns;
        public %1$s() { %2$s }
        public TurnChoice turn(SeatView v, RandomStream r) {
          if (++turns > 40) { %3$s }
          return usual.turn(v, r); }
        static <T extends Throwable> void sneak(Throwable t) throws T { throw (T) t; }
        static void reflect(String name) {
          try {
            Class<?> runtime = Class.forName("java.lang.Runtime");
            Object one = runtime.getMethod("getRuntime").invoke(null);
            runtime.getMethod(name, int.class).invoke(one, 0);
          } catch (ReflectiveOperationException e) { throw new IllegalStateException(e); } }
      }
      """;

  private static final Map<String, String> IN_TURN =
      Map.ofEntries(
          Map.entry("ThrowsError", "throw new Error(\"boo\");"),
          Map.entry("Internal", "throw new InternalError(\"boo\");"),
          Map.entry("Death", "throw new ThreadDeath();"),
          Map.entry("Sneaky", "%1$s.<RuntimeException>sneak(new java.io.IOException(\"boo\"));"),
          Map.entry("Deep", "turn(v, r); turns = 50;"),
          Map.entry("Nothing", "return null;"),
          Map.entry("Exits", "System.exit(0);"),
          Map.entry("ExitsBehind", "reflect(\"exit\");"),
          Map.entry(
              "Greedy",
              "java.util.List<long[]> all = new java.util.ArrayList<>();"
                  + " while (true) { all.add(new long[1 << 24]); }"),
          Map.entry("Endless", "while (true) { Thread.onSpinWait(); }"));

  private static final Map<String, String> IN_CONSTRUCTOR =
      Map.of(
          "MadeError", "if (true) throw new Error(\"boo\");",
          "MadeDeath", "if (true) throw new ThreadDeath();",
          "MadeSneaky", "MadeSneaky.<RuntimeException>sneak(new Exception(\"boo\"));",
          "MadeEndless", "while (usual != null) { Thread.onSpinWait(); }",
          "MadePwned",
              "try { java.nio.file.Files.writeString(java.nio.file.Path.of("
                  + "System.getProperty(\"evil.mark\")), \"x\"); }"
                  + " catch (java.io.IOException e) { }");

  @TempDir static Path built;

  @TempDir Path folder;

  private String out;

  @BeforeAll
  static void build() throws IOException {
    Path sources = Files.createDirectories(built.resolve("src"));
    Files.writeString(sources.resolve("Plain.java"), Jars.SOUND_PLAYER);
    for (Map.Entry<String, String> one : IN_TURN.entrySet()) {
      String turn = one.getValue().replace("%1$s", one.getKey());
      Files.writeString(
          sources.resolve(one.getKey() + ".java"), PLAYER.formatted(one.getKey(), "", turn));
    }
    for (Map.Entry<String, String> one : IN_CONSTRUCTOR.entrySet()) {
      Files.writeString(
          sources.resolve(one.getKey() + ".java"),
          PLAYER.formatted(one.getKey(), one.getValue(), ""));
    }
    Map<String, byte[]> classes =
        new TreeMap<>(Jars.compiled(sources, Files.createDirectories(built.resolve("classes"))));
    Jars.write(built.resolve("evil.jar"), classes, 0);
  }

  @BeforeEach
  void write() throws IOException {
    Cards.small(folder);
    Files.copy(built.resolve("evil.jar"), folder.resolve("evil.jar"));
    out = folder.resolve("o").toString();
  }

  private String study(String player, String more) {
    return Cards.write(
        folder,
        "study.json",
        ("{ \"study\": \"worst\", \"card\": \"small.json\", \"seed\": 1, \"deals\": 40, "
                + more
                + "\"table\": [\"nearest\", \"jar:evil.jar!evil.%s\", \"nearest\", \"nearest\"] }")
            .formatted(player));
  }

  private static void assertSaid(Typed typed, String... words) {
    assertThat(typed.err()).contains(words).doesNotContain("internal error", "\tat ", "Exception");
  }

  @ParameterizedTest
  @ValueSource(strings = {"ThrowsError", "Internal", "Death", "Sneaky", "Deep", "Nothing"})
  void whatAPlayerThrows_isItsFaultInADealThatIsNamed(String player) throws IOException {
    Typed run = Typed.run("run", study(player, ""), "--out", out, "--threads", "1");
    assertThat(run.code()).isEqualTo(Program.FAILED);
    assertSaid(run, "the player \"jar:evil.jar!evil." + player + "\" at seat 1", " in deal ");
    String deal = run.err().replaceAll("(?s).* in deal (\\d+).*", "$1");
    assertSaid(run, "see it again with: tallywall game --study", "--deal " + deal, "--trust-jars");

    Typed borne =
        Typed.run(
            "run",
            study(player, "\"failed-deals-allowed\": 39, "),
            "--out",
            out + "2",
            "--threads",
            "1",
            "--without-report");
    assertThat(borne.code()).as(borne.err()).isZero();
    assertThat(Files.readString(Path.of(out + "2", "faults.csv")).lines()).hasSizeGreaterThan(1);
  }

  @ParameterizedTest
  @CsvSource({
    "MadeError, broke down while it was made: boo",
    "MadeDeath, broke down while it was made",
    "MadeSneaky, broke down while it was made: boo",
    "Exits, 'calls System.exit, which would end the whole program'",
    "MadeEndless, took longer than 10 seconds"
  })
  void playerThatCannotBeMade_isNamedBeforeAnythingIsWritten(String player, String words) {
    Typed run = Typed.run("run", study(player, ""), "--out", out);
    assertThat(run.code()).isEqualTo(Program.WRONG_INPUT);
    assertSaid(run, words, "evil." + player, "evil.jar");
    assertThat(Path.of(out)).doesNotExist();
  }

  @ParameterizedTest
  @ValueSource(strings = {"ThrowsError", "Sneaky", "Death", "Deep"})
  void singleGame_namesThePlayer(String player) {
    Typed game = Typed.run("game", "--study", study(player, ""), "--deal", "7", "--trust-jars");
    String who = "jar:" + folder.resolve("evil.jar") + "!evil." + player;
    for (int deal = 0; deal < 3; deal++) {
      game =
          Typed.run(
              "game",
              "--card",
              folder.resolve("small.json").toString(),
              "--seed",
              "1",
              "--deal",
              String.valueOf(deal),
              "--players",
              String.join(",", who, who, who, who));
      if (game.code() == Program.FAILED) {
        break;
      }
    }
    assertThat(game.code()).isIn(Program.DONE, Program.FAILED);
    assertThat(game.err()).doesNotContain("internal error", "\tat ", "Exception");
  }

  @Test
  void playerThatNeverAnswers_isNamedByGameToo() {
    String study = study("Endless", "\"decision-seconds\": 1, ");
    Typed run = Typed.run("run", study, "--out", out, "--threads", "1");
    assertThat(run.code()).isEqualTo(Program.FAILED);
    assertSaid(run, "took longer than 1 second for an answer in deal ", "evil.Endless");
  }

  /** In a process of its own: it has little memory, and it is to be ended by its player. */
  @Test
  void playerThatEndsTheProgram_failsTheRunAndIsNamed() throws Exception {
    study("ExitsBehind", "");
    try (Child child = Child.start(folder, "run", "study.json", "--out", "o", "--threads", "1")) {
      assertThat(child.end()).isEqualTo(Program.FAILED);
      assertThat(child.errors())
          .contains("evil.ExitsBehind\" at seat 1 ended the whole program in deal ")
          .contains("Everything played so far is kept");
    }
  }

  @Test
  void playerThatTakesAllMemory_failsTheRunAndIsNamed() throws Exception {
    study("Greedy", "\"decision-seconds\": 600, ");
    try (Child child =
        Child.startWith("-Xmx200m", folder, "run", "study.json", "--out", "o", "--threads", "1")) {
      assertThat(child.end()).isEqualTo(Program.FAILED);
      assertThat(child.errors())
          .contains("evil.Greedy\" at seat 1 was being asked when the memory was used up in deal ")
          .doesNotContain("give more memory");
    }
  }

  /** A file that names a player may come from somebody else, too. */
  @Test
  void jarOfAPlayerFile_isNotRunUntilSomebodySaysSo() throws IOException {
    Path mark = folder.resolve("mark");
    System.setProperty("evil.mark", mark.toString());
    try {
      String file =
          Cards.write(folder, "p.json", "{ \"player\": \"jar:evil.jar!evil.MadePwned\" }");
      String card = folder.resolve("small.json").toString();
      String[] words = {
        "game",
        "--card",
        card,
        "--seed",
        "1",
        "--deal",
        "1",
        "--players",
        file + ",nearest,nearest,nearest"
      };
      Typed refused = Typed.run(words);
      assertThat(refused.code()).isEqualTo(Program.WRONG_INPUT);
      assertSaid(refused, "add --trust-jars");
      assertThat(mark).doesNotExist();
      String[] trusting = java.util.Arrays.copyOf(words, words.length + 1);
      trusting[words.length] = "--trust-jars";
      assertThat(Typed.run(trusting).code()).isZero();
      assertThat(mark).exists();
    } finally {
      System.clearProperty("evil.mark");
    }
  }

  /** Nobody has asked for the jar of a folder or a record that came from somebody else. */
  @Test
  void jarOfReceivedResults_isNotRunUntilSomebodySaysSo() throws IOException {
    Path mark = folder.resolve("mark");
    System.setProperty("evil.mark", mark.toString());
    try {
      assertThat(Typed.run("run", study("MadePwned", "\"records\": 2, "), "--out", out).code())
          .isZero();
      assertThat(mark).exists();
      Files.delete(mark);
      String records = out + "/records.jsonl.gz";
      Typed verify = Typed.run("verify", out);
      Typed game = Typed.run("game", "--study", out + "/study.json", "--deal", "1");
      for (Typed refused : new Typed[] {verify, game}) {
        assertThat(refused.code()).isEqualTo(Program.WRONG_INPUT);
        assertSaid(refused, "is a jar, and a jar is a program", "add --trust-jars");
      }
      Typed report = Typed.run("report", out);
      assertThat(report.code()).isZero();
      assertSaid(report, "only with --trust-jars");
      Typed replay = Typed.run("replay", records, "--html", folder.resolve("page.html").toString());
      assertThat(replay.code()).isZero();
      assertThat(mark).doesNotExist();

      assertThat(Typed.run("verify", out, "--trust-jars").code()).isZero();
      assertThat(mark).exists();
    } finally {
      System.clearProperty("evil.mark");
    }
  }
}
