package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A line read back aloud. */
class CardSentenceTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      value = {
        "1111x 22y 333x 444z 55y # any # a kong in one suit; a pair one higher in a second suit; a"
            + " pung two higher in the first suit; a pung three higher in a third suit; a pair four"
            + " higher in the second suit; any five in a row",
        "FF DDDDx nnnnx DDDDy # none # a pair of flowers; a kong of the matching dragon and a kong"
            + " of any number in one suit; a kong of the dragon of a second suit",
        "NNNN EEE WWW SSSS # none # a kong of north, a pung of east, a pung of west and a kong of"
            + " south",
        "1111b NNNN (22x|33x) 44x FF # none # a kong of 1s in bams; a kong of north; one of: a pair"
            + " of 2s in a second suit, or a pair of 3s in a second suit; a pair of 4s in the second"
            + " suit; a pair of flowers; just these numbers",
        "22x 33x 22x 4444x FFFF # none # a pair of 2s, a pair of 3s, a pair of 2s and a kong of 4s"
            + " in one suit; a kong of flowers; just these numbers",
        "2026x 222y 666z FFFF # none # two single 2s, a single soap and a single 6 in one suit; a"
            + " pung of 2s in a second suit; a pung of 6s in a third suit; a kong of flowers; just these numbers",
        "FFF 33x 777x 5555y 99z # none # a pung of flowers; a pair of 3s and a pung of 7s in one"
            + " suit; a kong of 5s in a second suit; a pair of 9s in a third suit; just these numbers",
        "5555x 555y 555z (RRRR|GGGG|0000) # any # a kong in one suit; a pung in a second suit; a"
            + " pung in a third suit; one of: a kong of red, or a kong of green, or a kong of soap;"
            + " any one number",
        "uuuu 222x 44x 666y 88y # none # a kong of any wind; a pung of 2s and a pair of 4s in one"
            + " suit; a pung of 6s and a pair of 8s in a second suit; just these numbers",
        "11x 44x 777x DDDy DDDDz # none # a pair of 1s, a pair of 4s and a pung of 7s in one suit;"
            + " a pung of the dragon of a second suit and a kong of the dragon of a third suit; just these numbers",
        "11x 44x 777x DDDx DDDDb # none # a pair of 1s, a pair of 4s, a pung of 7s and a pung of the"
            + " matching dragon in one suit other than bams; a kong of green; just these numbers",
        "FFFF 2048x 222y 888z # none # a kong of flowers; a single each of 2, soap, 4 and 8 in one"
            + " suit; a pung of 2s in a second suit; a pung of 8s in a third suit; just these numbers",
        "FFF 333x 555x 777x nny # by-two # a pung of flowers; a pung, a pung two higher and a pung"
            + " four higher in one suit; a pair of any number in a second suit; any three odd"
            + " numbers in a row",
        "FFF 222x 444x 666x nny # by-two # a pung of flowers; a pung, a pung two higher and a pung"
            + " four higher in one suit; a pair of any number in a second suit; any three even"
            + " numbers in a row",
        "NEWS 2222c 99d 6666b # none # a single each of north, east, west and south; a kong of 2s in"
            + " craks; a pair of 9s in dots; a kong of 6s in bams; just these numbers",
        "2x 2x 2x 0 0 F FFF 1111b E # none # three single 2s and two singles of soap in one suit other"
            + " than bams; a single flower and a pung of flowers; a kong of 1s in bams; a single"
            + " east; just these numbers",
        "nnnnx nnnny kkz 8888y # none # a kong of number n in one suit; a kong of number n in a"
            + " second suit; a pair of number k in a third suit; a kong of 8s in the second suit",
        "uuu vvv uu vv FFFF # none # a pung of any wind, a pung of another wind, a pair of that"
            + " first wind, a pair of that other wind and a kong of flowers",
        "4444x 666x 999x FFFF # any # a kong, a pung two higher and a pung five higher in one suit;"
            + " a kong of flowers; numbers spaced as in 1 3 6",
        "3333x 666x 999x FFFF # any # a kong, a pung three higher and a pung six higher in one suit;"
            + " a kong of flowers; any three numbers three apart",
        "2222x 333x 444x FFFF # by-two # a kong, a pung one higher and a pung two higher in one suit;"
            + " a kong of flowers; any three in a row, the lowest even",
        "(11x|33x) 5555x FFFF SSSS # any # either a pair and a kong four higher in one suit; a kong"
            + " of flowers and a kong of south; any two numbers four apart; or a pair and a kong two"
            + " higher in one suit; a kong of flowers and a kong of south; any two numbers two apart",
      })
  void hand_readBack_isASentence(String tiles, String slide, String sentence) {
    assertThat(CardSentence.of(CardTexts.line(tiles, slide)))
        .isEqualTo(sentence + "; may be exposed; pays 25");
  }

  @Test
  void terms_readBack_followTheHand() {
    assertThat(
            CardSentence.of(
                CardTexts.line(
                    "\"tiles\": \"FFFF nnnx mmmy 10z 10z\", \"where\": \"nm: 19 28\","
                        + " \"suits\": \"or one\", \"concealed\": true, \"jokers\": false,"
                        + " \"jokerless\": false, \"value\": 35")))
        .isEqualTo(
            "a kong of flowers; a pung of number n in one suit; a pung of number m in a second"
                + " suit; two singles each of 1 and soap in a third suit; n and m are 1 and 9,"
                + " or 2 and 8; or all in one suit; concealed; no jokers anywhere; not doubled"
                + " without jokers; pays 35");
    assertThat(
            CardSentence.of(
                CardTexts.line(
                    "\"tiles\": \"nnx 11b 22b 33b 44b 55b 66b\", \"where\": \"n: 3 6 9\","
                        + " \"jokerless\": true, \"value\": 50")))
        .endsWith("; n is 3, 6 or 9; may be exposed; doubled without jokers; pays 50");
  }

  @Test
  void alternatives_readBack_areJoinedByOr() {
    assertThat(
            CardSentence.of(
                CardTexts.line(
                    "\"tiles\": [\"FF 1111b 2222c NNNN\", \"FF 1111b 2222c SSSS\"], \"value\": 30")))
        .isEqualTo(
            "either a pair of flowers; a kong of 1s in bams; a kong of 2s in craks; a kong of north;"
                + " or a pair of flowers; a kong of 1s in bams; a kong of 2s in craks; a kong of"
                + " south; just these numbers; may be exposed; pays 30");
  }

  /** The example beside the sentence has the order of the paper, too. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      value = {
        "NNNN EEE WWW SSSS # none # NNNN EEE WWW SSSS",
        "FF 1111x 22y 333x 44y F # any # FF 1111b 22c 333b 44c F",
        "(NNN|SSS) 22x FFFF nnnnx E # none # NNN 22b FFFF 1111b E",
        "uu vvv DDDDx nnnnx E # none # NN EEE GGGG 1111b E",
      })
  void example_ofALine_hasTheOrderOfThePaper(String tiles, String slide, String example) {
    Line line = CardTexts.line(tiles, slide);
    assertThat(line.example()).isEqualTo(example);
    assertThat(line.example().length()).isEqualTo(line.hands().get(0).toString().length());
  }

  /** Of a line whose first pattern cannot be made the example is from another one. */
  @Test
  void example_ofALineWithSeveralHands_isOneThatCanBeMade() {
    Line line =
        CardTexts.line(
            "\"tiles\": [\"NNNN NN NN NN NN NN\", \"FF 2222c 1111b SSSS\"], \"value\": 30");
    assertThat(line.example()).isEqualTo("FF 2222c 1111b SSSS");
  }
}
