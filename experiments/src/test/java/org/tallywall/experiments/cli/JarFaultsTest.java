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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Jars that cannot be used, and players from jars that spoil a game: what the user is told. */
class JarFaultsTest {
  private static final Map<String, String> SOURCES =
      Map.of(
          "Hidden", "class Hidden extends Plain { public Hidden() {} }",
          "Half", "public abstract class Half extends Plain { public Half() {} }",
          "Choosy", "public class Choosy extends Plain { public Choosy(int much) {} }",
          "Stranger", "public class Stranger { public Stranger() {} }",
          "Faint",
              "public class Faint extends Plain {"
                  + " public Faint() { throw new IllegalStateException(\"no tea\"); } }",
          "Lost", "public class Lost extends Plain { public Lost() { new Helper(); } }",
          "Helper", "public class Helper { public Helper() {} }",
          "Weak",
              "public class Weak extends Plain {"
                  + " public org.tallywall.core.play.TurnChoice turn("
                  + "org.tallywall.core.play.SeatView v, org.tallywall.core.random.RandomStream r)"
                  + " { if (v.held(35) > 2) { throw new AssertionError(\"tired\"); }"
                  + " return usual.turn(v, r); } }",
          "Seer",
              "public class Seer extends Plain implements org.tallywall.core.play.SeesOpenTable {"
                  + " public void sitAt(org.tallywall.core.play.OpenTable table) {} }");

  private static final String LISTS =
      """
      package own;
      import java.util.List;
      import java.util.function.Supplier;
      import org.tallywall.core.play.Player;
      import org.tallywall.strategies.catalog.*;
      public class %1$s implements PlayerSource {
        public List<PlayerType> players() {
          Supplier<Player> maker = () -> new %3$s();
          return List.of(new PlayerType("%2$s", "a test", List.of(), maker)); } }
      """;

  @TempDir static Path built;
  private static Map<String, byte[]> classes;

  @TempDir Path folder;

  @BeforeAll
  static void build() throws IOException {
    Path sources = Files.createDirectories(built.resolve("src"));
    Files.writeString(sources.resolve("Plain.java"), Jars.SOUND_PLAYER);
    for (Map.Entry<String, String> source : SOURCES.entrySet()) {
      Files.writeString(
          sources.resolve(source.getKey() + ".java"), "package own; " + source.getValue());
    }
    Files.writeString(sources.resolve("Taken.java"), LISTS.formatted("Taken", "nearest", "Plain"));
    Files.writeString(sources.resolve("Good.java"), LISTS.formatted("Good", "own", "Plain"));
    Files.writeString(sources.resolve("Sly.java"), LISTS.formatted("Sly", "sly", "Seer"));
    Files.writeString(sources.resolve("Shout.java"), LISTS.formatted("Shout", "LOUD", "Plain"));
    classes = new TreeMap<>(Jars.compiled(sources, built.resolve("classes")));
    classes.remove("own/Helper.class");
  }

  @BeforeEach
  void write() {
    Cards.small(folder);
    Jars.write(folder.resolve("own.jar"), classes, 0);
  }

  private Typed ask(String word) {
    return Typed.run("players", word);
  }

  private String own(String name) {
    return "jar:" + folder.resolve("own.jar") + "!" + name;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "own.Plane    | holds no player \"own.Plane\"; did you mean \"own.Plain\"?",
        "plain        | holds no player \"plain\"; did you mean",
        "own.Hidden   | \"own.Hidden\" in \"%s\" cannot be made; declare it \"public\"",
        "own.Half     | cannot be made; declare it \"public\" and not \"abstract\"",
        "own.Choosy   | give it a public constructor without parameters",
        "own.Stranger | is not a player: it does not implement org.tallywall.core.play.Player",
        "own.Faint    | \"own.Faint\" in \"%s\" broke down while it was made: no tea",
        "own.Lost     | broke down while it was made: it needs \"own.Helper\", which the jar lacks",
      })
  void classThatIsNoPlayer_isNamedWithTheRemedy(String name, String said) {
    Typed typed = ask(own(name));
    assertThat(typed.code()).isEqualTo(Program.WRONG_INPUT);
    assertThat(typed.err()).contains(said.replace("%s", folder.resolve("own.jar").toString()));
    assertThat(typed.err().lines()).hasSize(1);
  }

  @Test
  void wordThatNamesNoJar_isAnsweredWithTheWayToWriteIt() {
    assertThat(ask("jar:own.jar").err()).contains("write jar:my.jar!my.pkg.MyPlayer");
    assertThat(ask("jar:!own.Plain").err()).contains("write jar:my.jar!my.pkg.MyPlayer");
    assertThat(ask("jar:" + folder + "!x").err()).contains("is a folder; name a jar in it");
    Cards.write(folder, "no.jar", "no jar at all");
    assertThat(ask("jar:" + folder.resolve("no.jar") + "!x").err())
        .contains("is not a jar, or is damaged");
  }

  @Test
  void jarForANewerJava_isNamedWithItsVersion() {
    Map<String, byte[]> newer = new TreeMap<>(classes);
    byte[] plain = newer.get("own/Plain.class").clone();
    plain[7] = 44 + 60;
    newer.put("own/Plain.class", plain);
    Jars.write(folder.resolve("own.jar"), newer, 0);
    assertThat(ask(own("own.Plain")).err())
        .contains("was built for Java 60 and this is Java " + Runtime.version().feature());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "own.Taken | lists a player \"nearest\", but there is one by that name already",
        "own.Sly   | the player \"sly\" wants to see all tiles; its entry in the list must say so",
        "own.Shout | it broke down: a player's id is of a-z, 0-9 and hyphens, not LOUD",
        "own.None  | a class named in it is missing",
        "own.Plain | a class named in it is missing, is not a list of players",
      })
  void listThatCannotBeUsed_isNamedWithTheRemedy(String list, String said) throws IOException {
    Path plugins = Files.createDirectory(folder.resolve("plugins"));
    Map<String, byte[]> listed = new TreeMap<>(classes);
    listed.put(Jars.LIST, list.getBytes(StandardCharsets.UTF_8));
    Jars.write(plugins.resolve("list.jar"), listed, 0);
    Typed typed = Typed.run("players", "--plugins", plugins.toString());
    assertThat(typed.code()).isEqualTo(Program.WRONG_INPUT);
    assertThat(typed.err()).contains("list.jar\"").contains(said);
  }

  @Test
  void pluginsFolder_withoutPlayers_isRefused() throws IOException {
    String empty = Files.createDirectory(folder.resolve("empty")).toString();
    assertThat(Typed.run("players", "--plugins", empty).err()).contains("has no jars in it");
    assertThat(Typed.run("players", "--plugins", empty + "/x").err())
        .contains("there is no folder");
    assertThat(Typed.run("players", "--plugins", folder.toString()).err())
        .contains("own.jar\" lists no players");
  }

  @Test
  void twoJarsWithOneIdOrOneName_areRefused() throws IOException {
    Map<String, byte[]> listed = new TreeMap<>(classes);
    listed.put(Jars.LIST, "own.Good".getBytes(StandardCharsets.UTF_8));
    Path plugins = Files.createDirectory(folder.resolve("plugins"));
    Jars.write(plugins.resolve("a.jar"), listed, 0);
    listed.put("notes.txt", new byte[] {1});
    Jars.write(plugins.resolve("b.jar"), listed, 0);
    assertThat(Typed.run("players", "--plugins", plugins.toString()).err())
        .contains("a.jar\"", "b.jar\"", "list a player \"own\"; give one of them another id");

    Path other = Files.createDirectory(folder.resolve("other"));
    Map<String, byte[]> plain = new TreeMap<>(classes);
    plain.put("notes.txt", new byte[] {1});
    Jars.write(other.resolve("own.jar"), plain, 0);
    String study =
        "{ \"study\": \"two\", \"card\": \"small.json\", \"seed\": 1, \"deals\": 1, \"table\": ["
            + "\"jar:own.jar!own.Plain\", \"jar:other/own.jar!own.Plain\", \"nearest\", \"nearest\"]}";
    String file = Cards.write(folder, "two.json", study);
    assertThat(Typed.run("run", file, "--out", folder.resolve("o").toString()).err())
        .contains("are different jars of one name; rename one of them");
  }

  @Test
  void playerThatSeesAllTiles_isMarkedAndRefusedWhereWaysArecompared() {
    assertThat(ask(own("own.Seer")).out()).contains("! SEES ALL TILES");
    String study =
        "{ \"study\": \"seer\", \"card\": \"small.json\", \"seed\": 1, \"deals\": 1,"
            + "\"arms\": {\"a\": \"nearest\", \"b\": \"jar:own.jar!own.Seer\"}, \"baseline\": \"a\","
            + "\"others\": \"nearest\", \"primary\": \"points\" }";
    String file = Cards.write(folder, "seer.json", study);
    assertThat(Typed.run("run", file, "--out", folder.resolve("o").toString()).err())
        .contains("sees all tiles; it may sit at a \"table\" or in a \"round-robin\" only");
  }

  /** Not only exceptions: whatever a player throws spoils its deal and no more. */
  @Test
  void playerThatThrows_isAFaultLikeAnyOther() throws IOException {
    String study =
        "{ \"study\": \"weak\", \"card\": \"small.json\", \"seed\": 1, \"deals\": 60,%s \"table\": ["
            + "\"jar:own.jar!own.Weak\", \"nearest\", \"nearest\", \"nearest\"]}";
    String file = Cards.write(folder, "weak.json", study.formatted(""));
    String out = folder.resolve("o").toString();
    Typed stopped = Typed.run("run", file, "--out", out);
    assertThat(stopped.code()).isEqualTo(Program.FAILED);
    assertThat(stopped.err())
        .contains("the player \"jar:own.jar!own.Weak\" at seat 0 broke down in deal ")
        .contains("tallywall game --study " + out + "/study.json --deal ");
    String deal = stopped.err().replaceAll("(?s).* in deal (\\d+).*", "$1");
    Typed game = Typed.run("game", "--study", out + "/study.json", "--deal", deal, "--trust-jars");
    assertThat(game.code()).isEqualTo(Program.FAILED);
    assertThat(game.err()).contains("broke down; --debug shows where");
    String patient =
        Cards.write(folder, "patient.json", study.formatted(" \"failed-deals-allowed\": 59,"));
    assertThat(Typed.run("run", patient, "--out", out + "2").code()).isZero();
    assertThat(Files.readString(Path.of(out + "2", "faults.csv")).lines())
        .hasSizeBetween(2, 59)
        .anyMatch(row -> row.startsWith(deal + ",,0,jar:own.jar!own.Weak,broke down"));
  }
}
