package org.tallywall.core.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every fault of a sheet is named with its line and what to write instead. */
@Tag("one-jdk")
class SheetFaultsTest {
  @Test
  void fifthCopy_namesTheLinesThatShowIt() {
    Sheets.assertFaulty(Sheets.turnWith("discards", "discards 2b 2b 3d 4d"))
        .hasMessage(
            "harbour.txt:5:13: this is one 2b too many: there are only 4, and the sheet shows them"
                + " in lines 4, 5");
  }

  @Test
  void exposure_thatNoLineAllows_isNamed() {
    Sheets.assertFaulty(Sheets.turnWith("exposed", "exposed 2 NNNJ 444d"))
        .hasMessage(
            "harbour.txt:6:16: no line of the card allows the exposure 444d together with NNNJ");
    Sheets.assertFaulty(Sheets.turnWith("exposed", "exposed 2 444d"))
        .hasMessage("harbour.txt:6:11: no line of the card allows the exposure 444d");
  }

  @Test
  void counts_wrong_areNamed() {
    Sheets.assertFaulty(Sheets.turnWith("rack", "rack 222b 66c 888c 66d FF S"))
        .hasMessage("harbour.txt:4:1: 13 tiles on the rack; at this moment seat 0 holds 14 in all");
    Sheets.assertFaulty(Sheets.turnWith("exposed", "exposed 0 NNNJ"))
        .hasMessageContaining("harbour.txt:4:1: 14 tiles on the rack and 4 exposed; at this");
    Sheets.assertFaulty(Sheets.turnWith("discards", "discards 1b 2c 3d 4d 5d"))
        .hasMessage("harbour.txt:5:1: 5 discards; with 95 tiles in the wall there can be only 4");
    Sheets.assertFaulty(Sheets.turnWith("discards", "unseen 1b 2c"))
        .hasMessage("harbour.txt:5:1: 2 unseen tiles; the wall and the other racks have 130");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          seat     | seat 4                   | 1:6: there is no seat "4"; write 0 (East), 1
          seat     | seat 1 2                 | 1:8: "2" is not expected here; write one seat
          seat     | sete 0                   | 1:1: the line "sete" is unknown; did you mean "seat"
          moment   | moment tern              | 2:8: the moment "tern" is unknown; did you mean "turn"
          moment   | moment first right       | 2:8: the moment is a pass; write: moment pass first right
          moment   | moment across            | 2:8: the moment is a pass; write: moment pass across
          moment   | moment pass right        | 2:13: the pass "right" is unknown; did you mean "right-1"
          moment   | moment pass first        | 2:13: the pass "first" is unknown
          moment   | moment pass third left   | 2:13: the pass "third" is unknown
          moment   | moment pass first up     | 2:13: the pass "up-1" is unknown
          moment   | moment turn draw 7d      | 2:13: write "turn" alone, "turn claimed", or "turn drew" and the tile
          moment   | moment turn drew 7d      | 2:1: the tile drawn, 7d, belongs on the rack too
          moment   | moment turn drew 7       | 2:18: "7": the number has no suit; write b, c or d after it, as in 5b
          moment   | moment courtesy give 4   | 2:22: how many go across is a number from 1 to 3, not "4"
          moment   | moment courtesy          | 2:8: the moment of the courtesy pass is missing; write one of ask, give
          moment   | moment offer 4d          | 2:14: write who threw it, as in "offer 4d from 0"
          wall     | wall many                | 3:6: the number of tiles left in the wall is a number from 0 to 200
          wall     | wall 120                 | 3:1: after the deal the wall has 99 tiles, not 120
          rack     | rack 222x 66c            | 4:9: "222x": there is no tile "x"
          rack     | rack 222b 66             | 4:11: "66": the number has no suit
          discards | discards in order 9d     | 5:19: "9d": write who threw it, a colon and the tile, as in 0:9d
          discards | discards in 0:9d         | 5:13: write "discards in order"
          exposed  | exposed 2                | 6:9: the exposures are missing
          exposed  | exposed 2 NN             | 6:11: "NN": an exposure has 3 to 6 tiles, not 2
          exposed  | exposed NNNJ             | 6:9: there is no seat "NNNJ"
          exposed  | blind 2 left-1 5         | 6:16: how many went on blind is a number from 0 to 3
          exposed  | passed left-1 1b 2b 3b 4b| 6:15: a pass has three tiles at most, not 4
          exposed  | plays 1                  | 6:7: the player is missing; write its name
          exposed  | expect discard 3b        | 6:1: "discard 3b": the rack holds none of 3b
          exposed  | expect discrad E         | 6:8: the choice "discrad" is unknown; did you mean "discard"
          exposed  | expect discard E S       | 6:18: "S" is not expected here; write "then" before a further move
          exposed  | expect stop              | 6:1: "stop": a turn is answered by "exchange", "mahjong" or "discard"
          exposed  | expect go                | 6:8: write "go on"
          exposed  | expect claim 7           | 6:14: the size of the exposure is a number from 3 to 6, not "7"
          exposed  | expect claim 4 jokers 4  | 6:23: the number of jokers in it is a number from 0 to 3, not "4"
          exposed  | expect exchange N        | 6:1: "exchange N": the rack holds no N
          exposed  | expect exchange E seat 2 | 6:1: "exchange E seat 2": no joker stands for E in that seat's exposures
          exposed  | expect discard E then mahjong | 6:1: "discard E then mahjong": nothing can follow here
          exposed  | never discard any        | 6:15: write at least one tile after "any"
          exposed  | dead                     | 6:1: write whose hand is dead, as in 2
          exposed  | dead 0                   | 6:1: seat 0 is asked, and a player whose hand is dead is asked nothing
          exposed  | dead 2 4                 | 6:8: there is no seat "4"
          exposed  | courtesy 1 4             | 6:12: how many tiles the seat asked for is a number from 0 to 3
          exposed  | exchanged 1 N            | 6:13: write whose exposure it was, as in "exchanged 3 5c from 1"
          exposed  | exchanged 1 N from 2     | 6:11: seat 2 has no such exposure of N on this sheet
          exposed  | exchanged 1 N from 2 group 5 | 6:28: which of the seat's exposures it was is a number from 1 to 4
          exposed  | lost 1                   | 6:6: the tile that was claimed is missing
          exposed  | passed left-1 nothing 1b | 6:23: "1b" is not expected here; write either tiles or "nothing"
          moment   | moment turn claimed      | 2:1: after a claim the player has a group exposed
          exposed  | wall 95                  | 6:1: "wall" is in line 3 already; write it only once
          """)
  void fault_ofOneLine_isNamedWithItsPlace(String line, String instead, String message) {
    Sheets.assertFaulty(Sheets.turnWith(line, instead))
        .hasMessageContaining("harbour.txt:" + message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          moment pass right-1    | expect pass 2b E S      | ok
          moment pass right-1    | expect pass 2b E        | 2 tiles here; 3 are passed
          moment pass left-1     | expect pass 2b E blind 1| ok
          moment pass right-1    | expect pass E E S       | the rack holds 1 of E
          moment pass right-1    | expect pass 2b E blind 1| at most 0 may go on blind here
          moment pass right-1    | expect pass with any 2b 9d | ok
          moment pass right-1    | expect pass with 2b     | write "pass with any" and the tiles
          moment pass right-1    | expect discard 2b       | a pass is answered by "pass" and tiles
          moment courtesy give 2 | expect pass E S         | ok
          moment courtesy give 2 | expect pass E           | 1 tile here; 2 are passed
          moment courtesy ask    | expect courtesy 2       | ok
          moment courtesy ask    | expect nothing          | the question is answered by "courtesy" and a number
          moment stop            | expect go on            | ok
          moment stop            | expect mahjong          | the question is answered by "stop" or "go on"
          """)
  void choice_mustBeAnAnswerToTheQuestion(String moment, String choice, String message) {
    String text = "seat 0\n" + moment + "\nrack 222b 66c 888c 66d FF E S\n" + choice;
    if (message.equals("ok")) {
      assertThat(Sheets.read(text).expect()).hasSize(1);
    } else {
      Sheets.assertFaulty(text).hasMessageContaining(message);
    }
  }

  @Test
  void expectedPass_ofAJoker_isRefused() {
    Sheets.assertFaulty(
            "seat 1\nmoment pass left-1\nrack 222b 66c 888c 66d FF J\nexpect pass J blind 2")
        .hasMessage("harbour.txt:4:1: \"pass J blind 2\": a joker may not be passed (rule 2.1.2)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          moment pass right-1    | dead 2               | during the passes that cannot have happened yet
          moment stop            | lost 2 N             | during the passes that cannot have happened yet
          moment pass left-2     | stopped 1            | the sheet has a pass of the second round
          moment stop            | stopped 1            | at this moment nobody has been asked yet
          moment courtesy ask    | stopped 1            | ok
          moment courtesy ask    | courtesy 1 2         | at this moment the courtesy pass is still to come
          moment courtesy give 2 | courtesy 1 2         | ok
          moment courtesy give 2 | passed courtesy E S  | at this moment nothing was given across yet
          moment pass right-1    | received courtesy E  | at this moment the courtesy pass is still to come
          """)
  void whatTheTableHeard_mustHaveBeenHeardByThen(String moment, String line, String message) {
    String text = "seat 0\n" + moment + "\nrack 222b 66c 888c 66d FF E S\n" + line;
    if (message.equals("ok")) {
      assertThat(Sheets.read(text).seat()).isZero();
    } else {
      Sheets.assertFaulty(text).hasMessageContaining("harbour.txt:4:1: " + message);
    }
  }

  @Test
  void exchangeNow_isOfThePlayerAsked() {
    Sheets.assertFaulty(Sheets.turnWith("discards", "exchanged 1 N from 2 now"))
        .hasMessageContaining("5:11: \"now\" is for an exchange of the player asked, in its turn");
  }

  @Test
  void missingLines_areNamedTogether() {
    Sheets.assertFaulty("wall 80")
        .hasMessageContaining("\"seat\" is missing")
        .hasMessageContaining("\"moment\" is missing")
        .hasMessageContaining("\"rack\" is missing");
    Sheets.assertFaulty(Sheets.TURN.replace("wall 95\n", ""))
        .hasMessageContaining("\"wall\" is missing");
  }

  @Test
  void offer_ofOneself_orOfAJoker_isRefused() {
    String offer =
        """
        seat 1
        moment offer %s
        wall 96
        rack 222b 66c 888c 66d FF E
        """;

    Sheets.assertFaulty(offer.formatted("8c from 1")).hasMessageContaining("its own discard");
    Sheets.assertFaulty(offer.formatted("J from 0"))
        .hasMessageContaining("a discarded joker cannot be claimed");
  }

  @Test
  void beforePlay_nothingLiesOpen() {
    String passes = "seat 1\nmoment pass right-1\nrack 222b 66c 888c 66d FF E\n";

    Sheets.assertFaulty(passes + "exposed 2 NNNJ")
        .hasMessageContaining("during the passes nothing is exposed yet");
    Sheets.assertFaulty(passes + "discards N")
        .hasMessageContaining("during the passes nothing is discarded yet");
  }

  @Test
  void discardsAndUnseen_together_areRefused() {
    Sheets.assertFaulty(Sheets.TURN + "unseen 5b")
        .hasMessageContaining("write either the discards or the unseen tiles");
  }

  /** Sheets come from strangers, too: the work ends at a bound, and so does every message. */
  @Test
  void sheet_ofMoreWordsThanAreRead_isRefusedWithTheBound() {
    Sheets.assertFaulty(Sheets.TURN + "never discard 1b\n".repeat(2_000_000))
        .hasMessageContaining(": a sheet has at most 5000 words; what follows was not read")
        .satisfies(refused -> assertThat(refused.getMessage()).hasSizeLessThan(20_000));
  }

  @ParameterizedTest
  @CsvSource({
    "seat",
    "moment",
    "wall",
    "rack",
    "discards",
    "exposed",
    "expect",
    "blind",
    "nothing"
  })
  void word_ofMillionsOfLetters_isCutInItsFault(String line) {
    String wrong = line + " 1" + "\u001b1".repeat(3_000_000) + "b";
    boolean stands = Sheets.TURN.contains(line);
    String text = stands ? Sheets.turnWith(line, wrong) : Sheets.TURN + wrong + "\n";
    Sheets.assertFaulty(text)
        .satisfies(
            refused ->
                assertThat(refused.getMessage()).hasSizeLessThan(5_000).doesNotContain("\u001b"));
  }
}
