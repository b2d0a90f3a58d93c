package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command that works out exact chances: its sentences, tables, files, and refusals. */
class ChancesCommandTest {
  @TempDir Path folder;

  private static Typed chances(String words) {
    List<String> all = new ArrayList<>(List.of("chances"));
    if (!words.isEmpty()) {
      all.addAll(List.of(words.split(" ")));
    }
    return Typed.run(all.toArray(String[]::new));
  }

  @Test
  void chances_alone_listsTheSums() {
    Typed typed = chances("");
    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .contains("\n  jokers\n", "\n  flowers\n", "\n  copies\n", "\n  pairs\n", "\n  pass\n")
        .contains("\n  draw\n", "\n  wait\n", "\n  draws-left\n");
  }

  /** The headline of every sum; the numbers are checked where the sums are. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "jokers | The chance to be dealt at least one joker is 52.0 %; for East, who gets 14 tiles,"
            + " it is 54.7 %.",
        "flowers --tiles 13 --at-least 2 | The chance to be dealt at least two flowers is 14.1 %.",
        "jokers --tiles 14 | For East, who gets 14 tiles, the chance to be dealt at least one joker"
            + " is 54.7 %.",
        "jokers --tiles 13 --at-least 5 | The chance to be dealt at least five jokers is 0.01 %"
            + " (about once in 10,096).",
        "jokers --tiles 1 | The chance of at least one joker among 1 tile out of the whole set is"
            + " 5.3 %.",
        "jokers --tiles 13..40 | The chance of at least one joker is 52.0 % among 13 tiles out of"
            + " the whole set and 91.9 % among 40.",
        "copies --tiles 13 | The chance to be dealt at least one tile of a kind that you name before"
            + " the deal is 30.3 %.",
        "pairs | The chance to be dealt at least one pair is 78.9 %; for East, who gets 14 tiles,"
            + " it is 84.1 %.",
        "pass --wanted 4 | If you want 4 of the 131 tiles that may come, the chance that at least"
            + " one is among the three passed to you is 9.0 %.",
        "pass --wanted 1 --jokers 8 | If you want 1 of the 139 tiles that may come, the chance that"
            + " it is among the three passed to you is 2.2 % (about once in 46).",
        "pass --wanted 4 --tiles 1 --east | If you want 4 of the 130 tiles that may come, the chance"
            + " that the tile passed to you is one of them is 3.1 % (about once in 33).",
        "pass --wanted 1..12 | The chance that at least one tile you want is among the three passed"
            + " to you is 2.3 % with 1 tile wanted and 25.2 % with 12.",
        "draw --wanted 3 --draws 10 --unseen 60 | If you want 3 of 60 unseen tiles and draw 10, the"
            + " chance that at least one of them comes is 42.7 %.",
        "draw --wanted 1 --draws 10 --unseen 60 | If you want 1 of 60 unseen tiles and draw 10, the"
            + " chance that it comes is 16.7 %.",
        "draw --wanted 3 --draws 5-20 --unseen 60 | If you want 3 of 60 unseen tiles, the chance"
            + " that at least one of them comes is 23.3 % with 5 draws and 71.1 % with 20.",
        "draw --wanted 1..8 --draws 10 --unseen 60 | If you draw 10 of 60 unseen tiles, the chance"
            + " that at least one tile that you want comes is 16.7 % with 1 tile wanted and 79.0 %"
            + " with 8.",
        "draw --wanted 3 --draws 3 --unseen 3 | If you want 3 of 3 unseen tiles and draw 3, the"
            + " chance that at least one of them comes is 100 %.",
        "draw --wanted 50 --draws 90 --unseen 100 | If you want 50 of 100 unseen tiles and draw 90,"
            + " the chance that at least one of them comes is 100 %.",
        "draw --wanted 50 --draws 40 --unseen 100 | If you want 50 of 100 unseen tiles and draw 40,"
            + " the chance that at least one of them comes is more than 99.9 %.",
        "draw --wanted 50 --draws 0 --unseen 100 | If you want 50 of 100 unseen tiles and draw 0,"
            + " the chance that at least one of them comes is 0 %.",
        "wait 5b --seen 55b --wall 40 | You wait for 2 unseen tiles: with 40 tiles in the wall and"
            + " 10 draws left, the chance to draw one yourself is 23.9 %.",
        "wait 5b --seen 5555b --wall 40 | Every tile that you wait for has been seen, so none can"
            + " come.",
        "wait --wanted 3 --wall 40 --hidden 20 | You wait for 3 unseen tiles: with 40 tiles in the"
            + " wall and 10 draws left, the chance to draw one yourself is 42.7 %.",
        "wait --wanted 1 --wall 41 --before-me 0 | You wait for 1 unseen tile: with 41 tiles in the"
            + " wall and 11 draws left, the chance to draw one yourself is 13.8 %.",
        "wait --wanted 6 --wall 20..80 | You wait for 6 unseen tiles: the chance to draw one"
            + " yourself is 42.7 % with 20 tiles in the wall and 67.7 % with 80.",
        "wait --wanted 1..8 --wall 40 | With 40 tiles in the wall and 10 draws left, the chance to"
            + " draw a tile you wait for is 12.7 % if 1 is unseen and 68.0 % if 8 are.",
        "draws-left --wall 42 | With 42 tiles in the wall, the next two to draw have 11 draws left"
            + " and the other two have 10.",
        "draws-left --wall 40 | With 40 tiles in the wall, everybody has 10 draws left.",
        "draws-left --wall 1 | With 1 tile in the wall, whoever draws next has 1 draw left and the"
            + " other three have none.",
        "draws-left --wall 99 | With 99 tiles in the wall, the next three to draw have 25 draws left"
            + " and the last has 24.",
        "draws-left --wall 0 | With no tile in the wall, nobody has a draw left.",
        "draws-left --wall 0..80/40 | With 80 tiles in the wall, everybody has 20 draws left; with"
            + " none, nobody has a draw left."
      })
  void sum_isAnsweredInASentence(String words, String sentence) {
    Typed typed = chances(words);
    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    assertThat(typed.out().replace('\n', ' ')).contains("?  " + sentence);
    assertThat(typed.out())
        .contains("\nThe formula\n", "\nSource: ", "\nWhat it takes for granted\n")
        .contains("no game was");
  }

  /** By rules with other tiles, other chances. */
  @Test
  void rules_thatSaySo_changeTheSet() {
    String rules =
        Cards.write(
            folder, "rules.json", "{ \"tiles.jokers\": 10, \"charleston.jokersMayPass\": true }");
    assertThat(Typed.run("chances", "jokers", "--rules", rules).out())
        .contains("n = 154 tiles in the set, m = 10 jokers");
    assertThat(Typed.run("chances", "pass", "--wanted", "4", "--rules", rules).out())
        .contains("141 tiles may come: all 154 of the set but your own 13.");
    String none = Cards.write(folder, "none.json", "{ \"tiles.jokers\": 0 }");
    Typed typed = Typed.run("chances", "jokers", "--rules", none);
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).isEqualTo("tallywall: by these rules there are no jokers\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "jokrs | there is no sum \"jokrs\"; did you mean \"jokers\"?",
        "draw --wanted 3 --draws 10 | --unseen N is missing",
        "draw --wanted 70 --draws 10 --unseen 60 | you cannot want 70 tiles of 60 unseen ones",
        "draw --wanted 3 --draws 61 --unseen 60 | 61 draws are more than the 60 unseen tiles",
        "draw --wanted 3 --draws 10 --unseen 153 | --unseen 153 is more than the 152 tiles of the"
            + " set",
        "draw --wanted 0 --draws 10 --unseen 60 | --wanted takes 1 or more",
        "draw --wanted 1 --draws 0 --unseen 0 | --unseen takes 1 or more",
        "draw --wanted 3 --draws 1..5 --unseen 50..60 | one range at a time",
        "draw --wanted 3 --draws 10 --unseen 60 --at-least 4 | --at-least takes 1 to 3",
        "draw --wanted 3 --draws 10 --unseen 60 --at-least 0 | --at-least takes 1 to 3",
        "draw --wanted -3 --draws 10 --unseen 60 | \"-3\" is no number",
        "draw --wanted 3 --draws 1000000000000000000 --unseen 60 | the largest number here is 9999",
        "draw --wanted 3 --draws 20..5 --unseen 60 | 20..5 goes downward; write 5..20",
        "draw --wanted 3 --draws 5.. --unseen 60 | \"5..\" is no number; write one as in 40",
        "draw --wanted 3 --draws 5..9/0 --unseen 60 | takes every 0th number; write 1 or more",
        "draw --wanted 3 --draws , --unseen 60 | \",\" is no number",
        "jokers --tiles 0 | --tiles takes 1 to 152, the tiles of the set, not 0",
        "jokers --tiles 13..153 | --tiles takes 1 to 152, the tiles of the set, not 153",
        "jokers --at-least 9 | --at-least takes 1 to 8, as there are no more jokers, not 9",
        "pairs --at-least 35 | --at-least takes 1 to 34, as there are no more kinds, not 35",
        "jokers --at-least x | \"x\" is not a whole number",
        "pass --wanted 132 | --wanted takes 1 to 131, the tiles that may come, not 132",
        "pass --wanted 4 --tiles 4 | --tiles takes 1 to 3, not 4",
        "pass --wanted 4 --jokers 9 | --jokers takes 0 to 8, not 9",
        "wait --wall 40 | say what you wait for",
        "wait 5b --wanted 3 --wall 40 | say what you wait for, either",
        "wait --wanted 3 --seen 5b --wall 40 | --seen goes with the tiles you wait for",
        "wait 5b 8b --wall 40 | unexpected \"8b\"; put all the tiles in quotes",
        "wait 5b --seen 8b --wall 40 | --seen has 8b, which you do not wait for",
        "wait 5b5b --wall 40 | name 5b once",
        "wait 5x --wall 40 | the tiles you wait for: \"5x\"",
        "wait , --wall 40 | say which tiles you wait for",
        "wait 5b --seen 55555b --wall 40 | there are only 4 of 5b",
        "wait 5b --wall 100 | --wall takes 0 to 99, as many as a deal leaves, not 100",
        "wait 5b --wall 40 --draws 41 | 41 draws are more than the 40 tiles in the wall",
        "wait 5b --wall 40 --draws 4 --before-me 1 | take one of these: --draws or --before-me",
        "wait 5b --wall 40 --before-me 4 | --before-me takes 0 to 3, not 4",
        "wait 5b --wall 40 --hidden 43 | --hidden takes 0 to 42",
        "wait --wanted 80 --wall 40 | 80 tiles you wait for cannot be among 79 unseen ones",
        "wait FJ --seen FFFFFFFFJJJJJJJJ --wall 99 | --seen has 16 tiles, but with 99 in the wall",
        "wait --wanted 1..3 --wall 20..40 | one range at a time",
        "draws-left --wall 100 | --wall takes 0 to 99",
        "draws-left | --wall N is missing",
        "draws-left --wall 42 --svg x.svg | this answer has no chart for --svg",
        "jokers --csv same --md ./same | two options name the same file"
      })
  void input_thatIsWrong_isRefusedInASentence(String words, String sentence) {
    Typed typed = chances(words);
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("tallywall: ").contains(sentence);
    assertThat(typed.err().lines().count()).isLessThanOrEqualTo(2);
  }

  /** No number and no range is so large that it takes long or much. */
  @Test
  void hugeRanges_areRefusedAtOnce() {
    String many = "1" + ",1".repeat(5_000);
    assertThat(chances("draws-left --wall " + many).err()).contains("is no number");
    assertThat(chances("draws-left --wall 0..9999").err()).contains("--wall takes 0 to 99");
  }

  @Test
  void files_askedFor_areWrittenAndNeverOver() throws IOException {
    String stem = folder.resolve("jokers").toString();
    String[] words = {
      "chances",
      "jokers",
      "--md",
      stem + ".md",
      "--csv",
      stem + ".csv",
      "--html",
      stem + ".html",
      "--svg",
      stem + ".svg"
    };
    Typed typed = Typed.run(words);
    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("\nWrote " + stem + ".md\nWrote " + stem + ".csv\n");
    assertThat(Files.readString(Path.of(stem + ".md")))
        .startsWith("# How many jokers are dealt to you?\n\n**The chance to be dealt")
        .contains("| 4 or more | 0.2 % | 0.2 % | 0.3 % | 0.3 % |");
    assertThat(Files.readString(Path.of(stem + ".html")))
        .contains("<svg", "The chance to be dealt at least one joker is 52.0 %");
    assertThat(Files.readString(Path.of(stem + ".svg")))
        .startsWith("<svg")
        .contains("no game was played", "152 tiles, 8 of them jokers");

    Typed again = Typed.run(words);
    assertThat(again.code()).isEqualTo(2);
    assertThat(again.out()).isEmpty();
    assertThat(again.err()).contains("jokers.md\" exists already; name a new file");
  }

  /** What is folded away for readers stands in the file: every count, in every digit. */
  @Test
  void csv_hasEveryCount() throws IOException {
    Path file = folder.resolve("jokers.csv");
    Typed.run("chances", "jokers", "--csv", file.toString());
    List<String> lines = Files.readAllLines(file);
    assertThat(lines).hasSize(10);
    assertThat(lines.get(0)).isEqualTo("count,exactly-13,at-least-13,exactly-14,at-least-14");
    double sum = 0;
    for (String line : lines.subList(1, lines.size())) {
      sum += Double.parseDouble(line.split(",")[1]);
    }
    assertThat(sum).isBetween(1 - 1e-13, 1 + 1e-13);
    assertThat(lines.get(9)).startsWith("8,0.00000000021963477");
  }

  /** The numbers of the position stand in its file, those that are the same in every row, too. */
  @Test
  void csv_ofAWait_namesItsNumbers() throws IOException {
    Path file = folder.resolve("wait.csv");
    Typed.run(
        "chances", "wait", "5b 8b", "--seen", "55b", "--wall", "20..28/4", "--csv", file + "");
    assertThat(Files.readAllLines(file))
        .hasSize(4)
        .startsWith("wall,outs,draws,you,anybody")
        .anyMatch(line -> line.startsWith("24,6,6,0.4659"));
  }

  /** Rounded numbers that look certain or impossible are said to be neither. */
  @Test
  void roundedNumbers_thatLookCertain_areExplained() {
    assertThat(chances("wait --wanted 20 --wall 20..80/20").out())
        .contains("100.0 % may stand for a little less than certain.");
    assertThat(chances("wait --wanted 6 --wall 20,40").out()).doesNotContain("may stand for");
    assertThat(chances("pairs").out()).contains("0.0 % may stand for a little more");
  }

  @Test
  void jumps_areSaidWhereTheWallIsNoMultipleOfFour() {
    String jumps = "so that the chance jumps at every fourth tile";
    String said = chances("wait --wanted 6 --wall 20..80").out().replace('\n', ' ');
    assertThat(said).contains(jumps);
    assertThat(chances("wait --wanted 6 --wall 20..80/4").out().replace('\n', ' '))
        .contains("divided by four, rounded down.")
        .doesNotContain(jumps);
    assertThat(chances("wait --wanted 6 --wall 20..80 --draws 5").out())
        .doesNotContain("divided by four");
  }

  @Test
  void answers_areTheSameWordsInEveryLocale() {
    String here = chances("pairs").out() + chances("wait --wanted 6 --wall 20..80").out();
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(chances("pairs").out() + chances("wait --wanted 6 --wall 20..80").out())
          .isEqualTo(here);
    } finally {
      Locale.setDefault(usual);
    }
  }
}
