package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A position typed in plain lines is put to a player. */
class AskCommandTest {
  private static final String FOLDER = "scenes/heron-reach/";
  private static final String CARD = FOLDER + "card.json";

  @TempDir Path folder;

  private static Typed ask(String sheet, String player, String... more) {
    String[] words = {"ask", sheet, "--card", CARD, "--player", player};
    String[] all = java.util.Arrays.copyOf(words, words.length + more.length);
    System.arraycopy(more, 0, all, words.length, more.length);
    return Typed.run(all);
  }

  private String write(String text) throws java.io.IOException {
    return Files.writeString(folder.resolve("mine.txt"), text).toString();
  }

  @Test
  void ask_sceneThatHolds_endsWithZero() {
    Typed typed = ask(FOLDER + "redeem-with-the-stranger.txt", "reckoner");

    assertThat(typed.code()).isZero();
    assertThat(typed.err()).isEmpty();
    assertThat(typed.out())
        .startsWith("redeem-with-the-stranger\n  rack ")
        .containsPattern("\n?  rack [1-9bcdNEWSRG0FJ ]+; exposed 1 [^\n]+; exposed 2 ")
        .contains("reckoner: exchange 8c seat 2 then discard E\n")
        .contains(
            "    exchange 8c seat 2: heading for R1, 2 away (12 of 14): needs 5b 8d; 8c buys a joker")
        .contains("    discard E: heading for R1, 1 away (13 of 14): needs 5b 8d, one of them by")
        .contains("R1 needs ", " no hand in mind needs E")
        .contains("  discards, best first, by its own judgment and not by measured games (worth:")
        .contains("\n    discard 8c: keeps 100% of the rack's worth\n")
        .contains("  expected: exchange 8c seat 2 then discard E: yes\n")
        .contains("  never: exchange 6d seat 1: kept\n")
        .contains("  because The 8c is of no use here");
    assertThat(typed.out().lines()).allMatch(line -> line.length() <= 100);
  }

  /** Of a watchful player with the risks that it reads; of a claim in times, with what is asked. */
  @Test
  void ask_ranksTheBestFew_asThePlayerJudgesThem() {
    String throwing = ask(FOLDER + "leave-the-dead-pair.txt", "watchful").out();
    String claiming = ask(FOLDER + "concealed-keeps-still.txt", "watchful").out();
    String passing = ask(FOLDER + "pass-the-strangers.txt", "reckoner").out();
    String near = ask(FOLDER + "leave-the-dead-pair.txt", "nearest").out();

    assertThat(throwing.lines().filter(line -> line.startsWith("    discard")).skip(1))
        .hasSize(5)
        .allMatch(line -> line.endsWith(" risk that someone wins on it"));
    assertThat(throwing).contains("\n    discard 6b: keeps 100% of the rack's worth, 0% risk");
    assertThat(throwing).contains("  discards, best first, weighing both numbers, by its own");
    assertThat(claiming)
        .contains("answers, best first", "\n    nothing: leaves the rack as it is\n")
        .contains("claim 4 jokers 0: makes the rack worth 0.0 times as much, wanted by no hand");
    assertThat(passing)
        .contains("tiles to pass, best first", "\n    pass R: keeps 100% of the rack's worth\n");
    assertThat(near).doesNotContain("best first");
  }

  @Test
  void ask_sceneThatDoesNotHold_endsWithOne() {
    Typed typed = ask(FOLDER + "redeem-with-the-stranger.txt", "nearest");

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out())
        .contains("  expected: exchange 8c seat 2 then discard E: no\n")
        .contains("  never: exchange 6d seat 1: not kept\n");
  }

  @Test
  void ask_playerThatDrawsLots_countsTheSeeds() {
    Typed typed = ask(FOLDER + "stop-when-twelve-stand.txt", "random-legal", "--seeds", "40");

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out())
        .containsPattern("random-legal: stop \\(with [0-9]+ of 40 seeds\\)")
        .containsPattern("random-legal: go on \\(with [0-9]+ of 40 seeds\\)")
        .containsPattern("expected: stop: no, with [0-9]+ of 40 seeds only")
        .containsPattern("never: go on: not kept \\(with [0-9]+ of 40 seeds\\)");
  }

  @Test
  void ask_severalSheets_countsThoseThatHold() {
    String one = FOLDER + "stop-when-twelve-stand.txt";
    String two = FOLDER + "redeem-with-the-stranger.txt";

    Typed typed = Typed.run("ask", one, two, "--card", CARD, "--player", "nearest");

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out()).endsWith("\n1 of 2 scenes\n");
  }

  @Test
  void ask_sheetThatIsWrong_endsWithTwo() throws java.io.IOException {
    String sheet = write("seat 0\nmoment turn\nrak 123b\nwall 80\n");

    Typed typed = ask(sheet, "nearest");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err())
        .contains("mine.txt:3:1: the line \"rak\" is unknown; did you mean \"rack\"?")
        .contains("the line \"rack\" is missing");
  }

  @Test
  void ask_sheetWithoutExpectation_printsTheAnswerAlone() throws java.io.IOException {
    String sheet = write("seat 0\nmoment turn\nwall 99\nrack 33555b 44666c 77d W J\n");

    Typed typed = ask(sheet, "nearest");

    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .startsWith(sheet + "\n  rack 33555b 44666c 77d W J\nnearest: discard W\n")
        .doesNotContain("expected");
  }

  @Test
  void ask_discardsLeftOut_areMentioned() throws java.io.IOException {
    Typed typed =
        ask(write("seat 0\nmoment turn\nwall 90\nrack 33555b 44666c 77d W J\n"), "nearest");

    assertThat(typed.out()).contains("The sheet leaves out 9 discards;");
  }

  @Test
  void ask_playerFromAFile_isThatOfAStudy() throws java.io.IOException {
    Path file =
        Files.writeString(
            folder.resolve("never.json"),
            "{ \"player\": \"reckoner\", \"jokers\": { \"exchange\": \"never\" } }");

    Typed typed = ask(FOLDER + "redeem-with-the-stranger.txt", file.toString());

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out()).contains("reckoner: discard ");
  }

  @Test
  void ask_wrongWords_areExplained() {
    assertThat(ask(FOLDER + "hold-her-tile.txt", "recconer").err())
        .contains("did you mean \"reckoner\"?");
    assertThat(ask(FOLDER + "hold-her-tile.txt", "nearest", "--seeds", "0").err())
        .contains("--seeds takes a number from 1 to 10,000, not 0");
    assertThat(ask(FOLDER + "hold-her-tile.txt", "open-tiles").err())
        .isEqualTo(
            "tallywall: \"open-tiles\" sees all racks and the wall, which no sheet shows; ask"
                + " another player\n");
    assertThat(ask(FOLDER + "no-such.txt", "nearest").code()).isEqualTo(2);
    assertThat(Typed.run("ask", "--card", CARD, "--player", "nearest").code()).isEqualTo(2);
  }

  @Test
  void new_printsAPositionThatCanBeAsked() throws java.io.IOException {
    Typed printed = Typed.run("ask", "--new", "offer");

    assertThat(printed.code()).isZero();
    assertThat(printed.out()).startsWith("// A position to fill in").contains("moment   offer 5b");
    assertThat(ask(write(printed.out()), "nearest").code()).isZero();
    assertThat(Typed.run("ask", "--new", "cuortesy-ask").err()).contains("did you mean");
    assertThat(Typed.run("ask").err())
        .isEqualTo(
            "tallywall: name the position's file; tallywall ask --new turn prints one to fill in\n");
    assertThat(Typed.run("ask").code()).isEqualTo(2);
  }
}
