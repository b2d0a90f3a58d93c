package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many concrete hands a line has, and which, in examples that can be counted by hand. */
class ExpansionTest {
  private static Line line(String tiles, String slide, String where, String suits) {
    return CardTexts.line(
        "\"tiles\": \"%s\", \"slide\": \"%s\", \"where\": \"%s\", \"suits\": \"%s\", \"value\": 25"
            .formatted(tiles, slide, where == null ? "" : where, suits));
  }

  /** The lines that the notation was extended for, and its first example. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      value = {
        "1111x 22y 333x 444z 55y           # any    #                             # as written # 30",
        "FFF 33x 777x 5555y 99z            # none   #                             # as written # 6",
        "4444x 55y 666y 777y 88z           # any    #                             # or one     # 45",
        "5555x 555y 555z (RRRR|GGGG|0000)  # any    #                             # as written # 81",
        "uuuu 222x 44x 666y 88y            # none   #                             # as written # 24",
        "11x 44x 777x DDDy DDDDz           # none   #                             # as written # 6",
        "FFFF 2048x 222y 888z              # none   #                             # as written # 6",
        "FFF 333x 555x 777x nny            # by-two #                             # as written # 162",
        "FF 44x 666x 8888y (NNN|SSS)       # none   #                             # as written # 12",
        "FFFF nnnx mmmy 10z 10z            # none   # nm: 19 28 37 46 55          # as written # 27",
        "FFFFFF 11x 22x 33y 44y            # any    #                             # as written # 36",
        "2048x nnnny mmmy kkky             # none   # nmk: 123 234 345 456 567 678 789 # as written # 42",
      })
  void line_ofTheNotation_hasItsNumberOfHands(
      String tiles, String slide, String where, String suits, int hands) {
    Line line = line(tiles, slide, where, suits);
    assertThat(line.hands()).hasSize(hands);
    Set<ConcreteHand> different = new HashSet<>(line.hands());
    assertThat(different).hasSize(hands);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      value = {
        // one suit letter, two, three, and with suits written out
        "FF 1111x NNNN SSSS   # none   # as written # 3",
        "FF 1111x 2222y SSSS  # none   # as written # 6",
        "FF 1111x 222b SSSS E # none   # as written # 2",
        "11b 11x 1111y SSSS EE # none  # as written # 2",
        "FF 1111x 2222y SSSS  # none   # or one     # 9",
        "111x 22y 3333z SSSS E # none  # or one     # 9",
        "F 111x 222y 333d SSSS # none  # or one     # 4",
        // dragons of a suit that numbers use, and of another
        "FF 1111x DDDDx SSSS  # none   # as written # 3",
        "FF 1111x DDDDy SSSS  # none   # as written # 6",
        "FF DDDDx DDDDy SSSS  # none   # as written # 3",
        "FF 1111b DDDDc SSSS  # none   # as written # 1",
        "FF 1111x DDDDx 0000  # none   # as written # 3",
        // numbers
        "FF nnnnx NNNN SSSS   # none   # as written # 27",
        "FF nnnnx nnnny SSSS  # none   # as written # 27",
        "FF nnnnx mmmmx SSSS  # none   # as written # 135",
        // 84 threes of different numbers and 72 with two alike, in three suits; three alike has six
        // loose
        "nnmmkkx NNNN SSSS    # none   # as written # 468",
        // winds
        "uuuu FFFF 111111b    # none   # as written # 4",
        "uuuu vvvv FFFFFF     # none   # as written # 6",
        "uuuu vvv FFFFFF E    # none   # as written # 12",
        "vv FFFF 1111b 2222b  # none   # as written # 4",
        // slides: 1-9, odd and even, and digits on both ends
        "FFFFFF 1111b SSSS    # any    # as written # 9",
        "FFFFFF 1111b SSSS    # by-two # as written # 5",
        "FFFFFF 8888b SSSS    # by-two # as written # 4",
        "FFFFFF 1111b 9999b   # any    # as written # 1",
        "FFFFF 1111b 2222b 0  # by-two # as written # 4",
        // soap never slides
        "FFFF 102b 3333b SSS  # any    # as written # 7",
      })
  void line_ofOnePart_hasItsNumberOfHands(String tiles, String slide, String suits, int hands) {
    assertThat(line(tiles, slide, "", suits).hands()).hasSize(hands);
  }

  @Test
  void brackets_multiply() {
    assertThat(line("FF 1111b (NNNN|SSSS) (EEEE|WWWW|RRRR)", "none", "", "as written").hands())
        .hasSize(6);
  }

  @Test
  void alternatives_slideEachByItself() {
    Line line =
        CardTexts.line(
            "\"tiles\": [\"FFFFFF 1111b SSSS\", \"FFFFFF 1111b 9999b\"], \"slide\": \"any\","
                + " \"value\": 25");
    assertThat(line.hands()).hasSize(10);
  }

  @Test
  void orOne_keepsTheHandsAsWrittenAndAddsTheOthers() {
    Line written = line("FF 1111x 2222y SSSS", "none", "", "as written");
    Line orOne = line("FF 1111x 2222y SSSS", "none", "", "or one");
    assertThat(CardTexts.words(orOne)).containsAll(CardTexts.words(written));
    assertThat(CardTexts.words(orOne))
        .contains("1111b 2222b SSSS FF", "1111c 2222c SSSS FF", "1111d 2222d SSSS FF");
  }

  @Test
  void looseTiles_countAsOneHeap() {
    Line apart = line("2x 0 26x NNNN SSSS EE", "none", "", "as written");
    Line together = line("22x 0 6x NNNN SSSS EE", "none", "", "as written");
    assertThat(apart.hands()).isEqualTo(together.hands()).hasSize(3);
    Line three = line("2x 2x 2x NNNN SSSS EEE", "none", "", "as written");
    Line pung = line("222x NNNN SSSS EEE", "none", "", "as written");
    assertThat(three.hands()).hasSize(3).doesNotContainAnyElementsOf(pung.hands());
  }

  @Test
  void handsThatNobodyCanMake_areLeftOut() {
    // With n = m there would be six loose tiles of a kind; else there are four at most.
    assertThat(line("nnx nnx mmx NNNN SSSS", "none", "", "as written").hands()).hasSize(3 * 72);
    // A kong and a pair of one kind need two jokers, which the line allows.
    assertThat(line("nnnnb nnb FFFF SSSS", "none", "", "as written").hands()).hasSize(9);
    // Two sextets of one kind need eight jokers; with a pair of that kind they would need ten.
    assertThat(line("nnnnnnb mmmmmmb FF", "none", "", "as written").hands()).hasSize(45);
    assertThat(line("nnnnnnb mmmmmmb nnb", "none", "", "as written").hands()).hasSize(72);
  }
}
