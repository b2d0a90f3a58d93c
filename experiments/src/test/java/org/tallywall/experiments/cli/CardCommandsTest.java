package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that check, read back, expand and compare cards. */
class CardCommandsTest {
  @TempDir Path folder;

  @Test
  void check_goodCard_countsLinesFamiliesAndWays() {
    Typed typed = Typed.run("card", "check", Cards.small(folder));

    assertThat(typed.code()).isZero();
    assertThat(typed.err()).isEmpty();
    assertThat(typed.out()).startsWith("ok: \"Little Harbour test card\" (for tests)\nsha256:");
    // 30 + 6, 2 + 6 and 3 ways: each line's is worked out by hand from its slides and suits.
    assertThat(typed.out()).contains("5 lines in 3 families, 47 ways to make them");
  }

  @Test
  void check_cardWithWarningsOnly_isGood() {
    String twice = Cards.SMALL.replace("NNNN EEE (WWWW|SSSS) RRR", "FF 333x 4444x 555y 66y");

    Typed typed = Typed.run("card", "check", Cards.write(folder, "twice.json", twice));

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("warnings (the card can be played all the same):");
    assertThat(typed.out()).contains("twice.json:7:", "shares a hand with L2");
  }

  @Test
  void check_severalFaults_allAreNamedWithTheirPlaces() {
    String faulty =
        Cards.SMALL
            .replace("\"value\": 25", "\"valeu\": 25")
            .replace("NEWS 111x", "NEWS 11x")
            .replace("99x NN SS", "99q NN SS");

    Typed typed = Typed.run("card", "check", Cards.write(folder, "faulty.json", faulty));

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err())
        .contains("faulty.json:5:", "valeu", "faulty.json:8:", "(V2)", "faulty.json:10:", "(C1)")
        .doesNotContain("Exception", "java.");
  }

  @Test
  void check_missingFileFolderAndBinary_areToldApart() throws IOException {
    Path binary = Files.write(folder.resolve("binary.json"), new byte[] {(byte) 0xff, 0, 1});

    assertOneComplaint(Typed.run("card", "check", "no-such.json"), "there is no such file");
    assertOneComplaint(Typed.run("card", "check", folder.toString()), "this is a folder");
    assertOneComplaint(Typed.run("card", "check", binary.toString()), "not a text in UTF-8");
    assertOneComplaint(
        Typed.run("card", "check", Cards.write(folder, "x.json", "{ card }")), "not JSON");
    assertOneComplaint(Typed.run("card", "check", ""), "the name of the file is empty");
    assertOneComplaint(Typed.run("card", "check", "a\0b"), "cannot be the name of a file");
  }

  private static void assertOneComplaint(Typed typed, String words) {
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).contains(words).doesNotContain("Exception", "java.");
  }

  /** The card is good all the same; both commands show what looks odd, read beside the line. */
  @Test
  void lineThatCannotBeMadeWithoutJokers_isWarnedOf() throws IOException {
    Path card = folder.resolve("odd.csv");
    Files.writeString(
        card, "family,tiles,value\nA,FF nnnnx mmmmx nnnnx,25\nA,NNNN EEE WWW SSSS,30\n");
    String warning = "needs 4 jokers in any case: 1111b 1111b 2222b FF has 8 of 1b";
    Typed checked = Typed.run("card", "check", card.toString());
    assertThat(checked.code()).isZero();
    assertThat(checked.out())
        .startsWith("ok:")
        .contains("warning: " + card + ":2:3 (A1): " + warning);
    Typed read = Typed.run("card", "read", card.toString());
    assertThat(read.code()).isZero();
    assertThat(read.out().replaceAll("\\s+", " "))
        .containsOnlyOnce("warning:")
        .contains("for example FF 1111b 1111b 1111b warning: " + warning)
        .contains("a kong of north, a pung of east, a pung of west and a kong of south;")
        .endsWith("for example NNNN EEE WWW SSSS ");
  }

  @Test
  void read_line_comesBackAsASentenceWithWaysAndExample() {
    Typed typed = Typed.run("card", "read", Cards.small(folder));

    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .contains(
            "  L1  \"the pier\"\n      2222x 33y 444x 555z 66y, slide any\n",
            "any five in a row",
            "30 ways, for example 1111b 22c 333b 444d 55c");
    assertThat(typed.out().lines()).allMatch(line -> line.length() <= 100);
  }

  @Test
  void expand_csv_hasOneRowForEveryWay() {
    Typed typed = Typed.run("card", "expand", Cards.small(folder), "--csv");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).startsWith("line,hand\nL1,1111b 333b 444d 22c 55c\n");
    assertThat(typed.out().lines()).hasSize(48).contains("V1,NNNN SSSS EEE RRR");
  }

  @Test
  void expand_forPeople_groupsTheHandsByLine() {
    assertThat(Typed.run("card", "expand", Cards.small(folder)).out())
        .contains("V1  2 ways\n    NNNN WWWW EEE RRR\n    NNNN SSSS EEE RRR\n");
  }

  @Test
  void compare_sameCard_isTheSame() {
    Typed typed = Typed.run("card", "compare", Cards.small(folder), Cards.small(folder));

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).isEqualTo("the same: 5 lines\n");
  }

  @Test
  void compare_wrongSuitLetterAndValue_onlyThoseLinesAreListed() {
    String other =
        Cards.SMALL
            .replace("2222x 33y 444x 555z 66y", "2222x 33y 444x 555z 66z")
            .replace("\"value\": 50", "\"value\": 55");

    Typed typed =
        Typed.run("card", "compare", Cards.small(folder), Cards.write(folder, "other.json", other));

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out())
        .startsWith("L1\n    hands: 30 only in the first")
        .contains("C1\n    value: 50 in the first, 55 in the second")
        .endsWith("2 lines differ\n")
        .doesNotContain("L2", "V1", "V2");
  }

  @Test
  void compare_faultySecondCard_isAComplaint() {
    String faulty = Cards.write(folder, "faulty.json", "[]");

    Typed typed = Typed.run("card", "compare", Cards.small(folder), faulty);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("faulty.json");
  }
}
