package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Players, settings, rules and help can be looked up without reading everything. */
class LookUpTest {
  @TempDir Path folder;

  private static String complaint(String... words) {
    Typed typed = Typed.run(words);
    assertThat(typed.code()).isEqualTo(Program.WRONG_INPUT);
    assertThat(typed.out()).isEmpty();
    return typed.err();
  }

  private static String answer(String... words) {
    Typed typed = Typed.run(words);
    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    return typed.out();
  }

  @Test
  void help_ofACommand_isWhatItsOptionSays() {
    assertThat(answer("help")).isEqualTo(answer("--help"));
    assertThat(answer("help", "run")).isEqualTo(answer("run", "--help"));
    assertThat(answer("help", "card", "check")).isEqualTo(answer("card", "check", "--help"));
  }

  @Test
  void help_ofNoCommand_namesTheOneMeant() {
    assertThat(complaint("help", "card", "chek")).contains("no command \"chek\"", "\"check\"");
    assertThat(complaint("help", "run", "x")).contains("\"x\"");
  }

  @Test
  void programAlone_saysWhatToDoFirst() {
    assertThat(answer())
        .contains("tallywall run studies/first-look.json", "tallywall help")
        .satisfies(text -> assertThat(text.lines().count()).isLessThan(24));
  }

  @Test
  void players_alone_fitAScreen() {
    assertThat(answer("players").lines().count()).isLessThan(24);
    assertThat(answer("players"))
        .contains("\nnearest       heads for")
        .doesNotContain("keep-pairs");
  }

  @Test
  void players_withAGroup_listItsSettingsAlone() {
    assertThat(answer("players", "watchful", "passes"))
        .contains("  passes: the Charleston\n", "passes.keep-pairs (true or false; usually false)")
        .doesNotContain("claims.");
    assertThat(answer("players", "watchful", "defense.hold-back"))
        .contains("defense.hold-back.away-at-least")
        .doesNotContain("defense.careful");
    assertThat(complaint("players", "watchful", "pases")).contains("did you mean \"passes\"?");
    assertThat(complaint("players", "nearest", "passes")).contains("nearest has no settings");
  }

  @Test
  void players_find_listsEachSettingOnceWithItsPlayers() {
    assertThat(answer("players", "--find", "Keep-Pairs"))
        .startsWith(
            "social, reckoner, steady, bold, cautious, watchful, sharp, custom, rollout:\n"
                + "    passes.keep-pairs (")
        .containsOnlyOnce("passes.keep-pairs");
    assertThat(complaint("players", "--find", "zzz")).contains("no setting has \"zzz\"");
    assertThat(complaint("players", "--find", " ")).contains("--find needs a word");
  }

  @Test
  void players_nameOfASetting_pointsToTheSearch() {
    assertThat(complaint("players", "keep-pairs"))
        .contains("try: tallywall players --find keep-pairs");
    assertThat(complaint("players", "kep-pairs"))
        .contains("did you mean the setting \"keep-pairs\"?");
    assertThat(complaint("players", "watchfull")).contains("\"watchful\"");
  }

  @Test
  void rules_alone_listsEveryGroup() {
    assertThat(answer("rules"))
        .startsWith("Tiles and seats\n")
        .contains("\n\nThe wall\n", "wall.cold (OFF, NO_MAHJONG_CLAIM, NO_CLAIM; usually OFF)\n")
        .contains("(always OFF; not played yet: MUSH)");
  }

  @Test
  void rules_byName_sayWhatEachValueMeans() {
    assertThat(answer("rules", "wall.cold"))
        .startsWith("The wall\n  wall.cold (")
        .contains("NO_CLAIM: nobody may claim a discard")
        .doesNotContain("wall.hot");
    assertThat(answer("rules", "charleston")).contains("charleston.pool", "(not played yet)");
    assertThat(complaint("rules", "wall.cald")).contains("did you mean \"wall.cold\"?");
  }

  @Test
  void rules_byWord_areFoundInNamesMeaningsAndValues() {
    assertThat(answer("rules", "--find", "courtesy"))
        .contains("charleston.courtesy (", "charleston.courtesyReveal")
        .doesNotContain("wall.");
    assertThat(answer("rules", "--find", "mush")).contains("charleston.pool");
    assertThat(complaint("rules", "--find", "zzz")).contains("no rule has \"zzz\"");
    assertThat(complaint("rules", "wall", "--find", "x")).contains("take one of these");
  }

  @Test
  void rules_written_playAsUsualAndAreNeverWrittenOver() throws IOException {
    Path file = folder.resolve("my rules.json");

    assertThat(answer("rules", "--write", file.toString()))
        .startsWith("Wrote " + file + "\n")
        .contains("--rules \"" + file + "\"");
    Files.writeString(file, Files.readString(file) + " ");
    assertThat(complaint("rules", "--write", file.toString())).contains("exists already");
    assertThat(Files.readString(file)).endsWith(" ");

    String[] game = {
      "game",
      "--card",
      Cards.small(folder),
      "--seed",
      "3",
      "--deal",
      "1",
      "--players",
      "nearest,nearest,nearest,nearest",
      "--rules",
      file.toString()
    };
    String[] usual = java.util.Arrays.copyOf(game, game.length - 2);
    assertThat(answer(game)).isEqualTo(answer(usual));
  }
}
