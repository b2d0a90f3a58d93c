package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What looks odd on a card that is good all the same. */
class CardWarningsTest {
  private static String warnings(String... lines) {
    CardReading reading = CardTexts.read(lines);
    assertThat(CardTexts.text(reading.faults())).isEmpty();
    assertThat(reading.card() != null).as("good").isTrue();
    return CardTexts.text(reading.warnings());
  }

  @Test
  void linesWithAHandInCommon_areNamedWithThatHand() {
    assertThat(
            warnings(
                "{ \"tiles\": \"FF 1111b 2222c (NNNN|SSSS)\", \"value\": 25 }",
                "{ \"tiles\": \"FF 1111b 2222c (EEEE|SSSS)\", \"value\": 25 }"))
        .isEqualTo("f:3:1 (L2): shares a hand with L1: 1111b 2222c SSSS FF");
  }

  @Test
  void lineWithoutAHandOfItsOwn_isNamedAsWell() {
    assertThat(
            warnings(
                "{ \"tiles\": \"FF 1111b 2222c (NNNN|SSSS)\", \"value\": 25 }",
                "{ \"tiles\": \"FF 1111b 2222c SSSS\", \"value\": 30 }"))
        .isEqualTo(
            "f:3:1 (L2): shares a hand with L1: 1111b 2222c SSSS FF\n"
                + "f:3:1 (L2): has no hand of its own: each of its hands is in another line too");
  }

  @Test
  void loosePairsAndSinglesOfOneKind_areTheSameHandHoweverPrinted() {
    assertThat(
            warnings(
                "{ \"tiles\": \"2b 0 26b 444c 8888d NNN\", \"value\": 25 }",
                "{ \"tiles\": \"22b 0 6b 444c 8888d NNN\", \"value\": 25 }"))
        .contains("f:3:1 (L2): shares a hand with L1: 8888d 444c NNN 22b 6b 0");
  }

  @Test
  void slideWithoutRoom_isNamedOnce() {
    assertThat(
            warnings(
                "{ \"tiles\": \"1111b 9999c FF (NNNN|SSSS|RRRR)\", \"slide\": \"any\", \"value\": 25 }"))
        .isEqualTo(
            "f:2:57 (L1): slide \"any\" changes nothing: the digits can only stay where they are");
  }

  @Test
  void orOneWithFewerThanTwoLetters_isNamed() {
    assertThat(
            warnings(
                "{ \"tiles\": \"FF 1111x 2222x NNNN\", \"suits\": \"or one\", \"value\": 25 }"))
        .isEqualTo(
            "f:2:45 (L1): suits \"or one\" changes nothing: the hand has fewer than two suit letters");
  }

  @Test
  void lineWithMoreEqualTilesThanThereAre_needsJokers() {
    assertThat(warnings("{ \"tiles\": \"FF nnnnx mmmmx nnnnx\", \"value\": 25 }"))
        .isEqualTo(
            "f:2:13 (L1): needs 4 jokers in any case: 1111b 1111b 2222b FF has 8 of 1b, and there"
                + " are only 4; is every letter and number right?");
    assertThat(warnings("{ \"tiles\": \"FFFF 2222x 22x NNNN\", \"value\": 25 }"))
        .contains("(L1): needs 2 jokers in any case: 2222b NNNN FFFF 22b has 6 of 2b, and there");
    assertThat(warnings("{ \"tiles\": \"FFFF 222x 22x 3x NNNN\", \"value\": 25 }"))
        .contains("(L1): needs a joker in any case: NNNN FFFF 222b 22b 3b has 5 of 2b, and there");
  }

  /** A quint is meant to have a joker; with a third suit or another number there is room. */
  @Test
  void lineThatHasRoomForItsGroups_isNotOdd() {
    assertThat(warnings("{ \"tiles\": \"FFFF 22222x NNNNN\", \"value\": 25 }")).isEmpty();
    assertThat(warnings("{ \"tiles\": \"FF nnnnx mmmmx NNNN\", \"value\": 25 }")).isEmpty();
    assertThat(warnings("{ \"tiles\": \"FFFFFF FF 222x 333x\", \"value\": 25 }")).isEmpty();
    assertThat(warnings("{ \"tiles\": \"FFFFF FFFF 22222x\", \"value\": 25 }"))
        .contains("has 9 of F, and there are only 8");
    assertThat(warnings("{ \"tiles\": \"22222x 222x NNNNNN\", \"value\": 25 }"))
        .contains("(L1): needs 6 jokers in any case");
  }

  @Test
  void plainCard_hasNoWarning() {
    assertThat(
            warnings(
                "{ \"tiles\": \"FF 1111x 2222y NNNN\", \"slide\": \"any\", \"suits\": \"or one\","
                    + " \"value\": 25 }"))
        .isEmpty();
  }
}
