package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.text.Fault;

/** Every rule that a card must keep, with place, line id and remedy, in JSON. */
class JsonCardFaultsTest {
  /** Columns count from 1 in the second row of the file, where the line stands. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      quoteCharacter = '\0',
      value = {
        // number of tiles and size of groups
        "{ 'tiles': 'FF 111b 2222c NNNN', 'value': 25 } # 13 # these are 13 tiles; a hand has 14",
        "{ 'tiles': '', 'value': 25 } # 13 # these are 0 tiles; a hand has 14",
        "{ 'value': 25, 'tiles': ['FF 1111b 2222c NNNN', 'F 1b'] } # 50 # these are 2 tiles",
        "{ 'tiles': 'FF 1111b 2222c (NNNN|SSS)', 'value': 25 } # 13 # these are 13 tiles",
        "{ 'tiles': 'FFFFFFF 1111b NNN', 'value': 25 } # 13 # a group has at most six tiles, this one has 7; put a space between groups",
        "{ 'tiles': 'NNN 11111110b 111c', 'value': 25 } # 17 # a group has at most six tiles",
        // symbols
        "{ 'tiles': 'FF 1111q 2222c NNNN', 'value': 25 } # 20 # there is no \"q\" on a card; known are 1-9 n m k",
        "{ 'tiles': 'FF 1111b 2222c NNNO', 'value': 25 } # 31 # there is no \"O\" on a card; write 0, the digit zero",
        "{ 'tiles': 'FF 1111B 2222c NNNN', 'value': 25 } # 20 # there is no \"B\" on a card; write b",
        "{ 'tiles': 'ff 1111b 2222c NNNN', 'value': 25 } # 13 # there is no \"f\" on a card; write F",
        "{ 'tiles': 'FF 1111X 2222c NNNN', 'value': 25 } # 20 # there is no \"X\" on a card; write x",
        "{ 'tiles': 'FF 1111b 2222c \u201DNNN', 'value': 25 } # 28 # there is no \"\u201D\" on a card; take the curly quote out",
        "{ 'tiles': 'FF 1111D 2222c NNNN', 'value': 25 } # 20 # a number or D has no suit; for dots write a small d, as in 55d",
        "{ 'tiles': 'FF 1111b 2222 NNNN', 'value': 25 } # 25 # a number or D has no suit; write b, c, d or x, y, z after it",
        "{ 'tiles': 'FF 1111b DDD NNNNN', 'value': 25 } # 24 # a number or D has no suit",
        "{ 'tiles': 'FF 11N 2222c NNNN', 'value': 25 } # 18 # a number or D has no suit before N",
        "{ 'tiles': 'FF x 2222c NNNN', 'value': 25 } # 16 # there is no number before the suit x; write 5x",
        "{ 'tiles': 'FF 111Jb 2222c NNNN', 'value': 25 } # 19 # a card prints no jokers",
        // brackets
        "{ 'tiles': 'FF 1111b 2222c (NNNN|SSSS', 'value': 25 } # 28 # the bracket is not closed; write ) after its parts",
        "{ 'tiles': 'FF 1111b 2222c (NNNN|)', 'value': 25 } # 33 # a part of the bracket is empty",
        "{ 'tiles': 'FF 1111b 2222c (NN(NN|SS))', 'value': 25 } # 28 # brackets cannot be inside brackets",
        "{ 'tiles': 'FF 1111b 2222c(NNNN|SSSS)', 'value': 25 } # 27 # a bracket holds whole words; put a space before and after it",
        "{ 'tiles': 'FF 1111b 2222c NNNN|SSSS', 'value': 25 } # 32 # one of several is written in brackets",
        "{ 'tiles': 'FF 1111b 2222c NNNN)', 'value': 25 } # 32 # one of several is written in brackets",
        // slide
        "{ 'tiles': 'FF DDDDx RRRR NNNN', 'slide': 'any', 'value': 25 } # 13 # slide \"any\" has no digit to move; leave the field out",
        "{ 'tiles': 'FF nnnnx 0000 NNNN', 'slide': 'by-two', 'value': 25 } # 13 # slide \"by-two\" has no digit to move",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'slide': 'all', 'value': 25 } # 45 # slide \"all\" is unknown; write one of none, any, by-two",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'slide': true, 'value': 25 } # 44 # \"slide\" is a text in double quotes, not true or false",
        // suits
        "{ 'tiles': 'FF 11x 22y 33z 44b 5555c', 'value': 25 } # 13 # the letters x y z stand for suits of their own, but only one suit is left for them",
        "{ 'tiles': '11b 22c 33d 4x 55b 66b 777b', 'value': 25 } # 13 # the letter x stands for a suit of its own, but no suit is left for it",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'suits': 'one', 'value': 25 } # 45 # suits \"one\" is unknown; write one of as written, or one; did you mean \"or one\"?",
        // where
        "{ 'tiles': 'FF nnnnx mmmmy NNNN', 'where': 'nk: 19', 'value': 25 } # 45 # where names the letter k, which the hand does not have",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'where': 'n: 1', 'value': 25 } # 45 # where names the letter n, which the hand does not have",
        "{ 'tiles': 'FF nnnnx mmmmy NNNN', 'where': 'nm: 19 2 37', 'value': 25 } # 52 # \"nm\" needs 2 figures in each choice, not 1",
        "{ 'tiles': 'FF nnnnx mmmmy NNNN', 'where': 'nm: 199 19', 'value': 25 } # 49 # \"nm\" needs 2 figures in each choice, not 3",
        "{ 'tiles': 'FF nnnnx mmmmy NNNN', 'where': 'nm: 19 9', 'value': 25 } # 52 # \"nm\" needs 2 figures in each choice, not 1",
        "{ 'tiles': 'FF nnnnx mmmmy NNNN', 'where': 'nm: 10', 'value': 25 } # 49 # figures are numbers from 1 to 9, as in nm: 19 28 37",
        "{ 'tiles': 'FF nnnnx mmmmy NNNN', 'where': 'nm 19', 'value': 25 } # 45 # write letters of n, m, k, a colon, then the figures",
        "{ 'tiles': 'FF nnnnx mmmmy NNNN', 'where': 'nn: 11', 'value': 25 } # 45 # write letters of n, m, k, a colon",
        "{ 'tiles': 'FF nnnnx mmmmy NNNN', 'where': 'nx: 11', 'value': 25 } # 45 # write letters of n, m, k, a colon",
        "{ 'tiles': 'FF nnnnx mmmmy NNNN', 'where': 'nm:', 'value': 25 } # 48 # \"nm\" needs 2 figures in each choice, not 0",
        // hands that nobody can make
        "{ 'tiles': 'NN NN N 111b 2222c DD', 'value': 25 } # 33 # a number or D has no suit",
        "{ 'tiles': 'NN NN N 111b 2222c RR', 'value': 25 } # 13 # no hand of this line can be made: 2222c 111b NN NN RR N needs 5 of N in singles and pairs, and there are only 4",
        "{ 'tiles': '11111b 111b 111111b', 'value': 25 } # 13 # no hand of this line can be made: 111111b 11111b 111b needs 10 jokers, and there are only 8",
        "{ 'tiles': 'FF 11111b 222c NNNN', 'jokers': false, 'value': 25 } # 13 # 11111b NNNN 222c FF needs a joker, but the line forbids jokers",
        // value
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'value': 0 } # 44 # \"value\" is a whole number from 1 to 1000000, not 0",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'value': -25 } # 44 # \"value\" is a whole number from 1 to 1000000, not -25",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'value': 2.5 } # 44 # \"value\" is a whole number from 1 to 1000000, not 2.5",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'value': '25' } # 44 # \"value\" is a whole number from 1 to 1000000, not a text",
        "{ 'tiles': 'FF 1111b 2222c NNNN' } # 1 # the field \"value\" is missing; write its points, as in \"value\": 25",
        "{ 'tiles': 'FF 1111b 2222c (NNNN or SSSS)', 'value': 25 } # 34 # for a choice write (NNNN|SSSS)",
        "{ 'tiles': 'FF 1111b 2222c or', 'value': 25 } # 28 # for a choice write (NNN|SSS)",
        // fields
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'value': 25, 'conceled': true } # 48 # unknown field \"conceled\" in a line; did you mean \"concealed\"?",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'value': 25, 'concealed': 'C' } # 61 # \"concealed\" is true or false, not a text",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'value': 25, 'jokers': 1 } # 58 # \"jokers\" is true or false, not a whole number",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'value': 25, 'jokerless': null } # 61 # \"jokerless\" is true or false, not null",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'value': 25, 'say': 5 } # 55 # \"say\" is a text in double quotes, not a whole number",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'value': 25, 'id': ' ' } # 54 # the id is empty; leave the field out to have one made",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'value': 25, 'id': 7 } # 54 # \"id\" is a text in double quotes, not a whole number",
        "{ 'tiles': 25, 'value': 25 } # 12 # tiles are a text in double quotes, not a whole number",
        "{ 'tiles': [], 'value': 25 } # 12 # the line has no tiles; write one hand of 14 tiles",
        "{ 'value': 25 } # 1 # the field \"tiles\" is missing; write its tiles",
        "[ 'FF 1111b 2222c NNNN', 25 ] # 1 # a line is an object in braces, not a list in square brackets",
        "{ 'tiles': 'FF 1111b 2222c NNNN', 'value': 25, 'value': 30 } # 48 # the field \"value\" is there twice; take one out",
      })
  void line_withAFault_namesPlaceIdAndRemedy(String line, int column, String message) {
    CardReading reading = CardTexts.read(line.replace('\'', '"'));
    assertThat(reading.card() == null).as("refused").isTrue();
    Fault fault = reading.faults().get(0);
    assertThat(CardTexts.text(reading.faults())).contains(message);
    assertThat(fault.line()).isEqualTo(2);
    assertThat(fault.column()).isEqualTo(column);
    assertThat(fault.message()).contains(message);
    if (!message.contains("is there twice")) {
      assertThat(fault.id()).isEqualTo("L1");
    }
  }

  @Test
  void field_thatMeansANeededOne_isFaultedOnce() {
    CardReading reading = CardTexts.read("{ \"tiles\": \"FF 1111b 2222c NNNN\", \"values\": 30 }");
    assertThat(reading.faults())
        .extracting(Fault::message)
        .singleElement()
        .asString()
        .contains("unknown field \"values\" in a line; did you mean \"value\"?");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      quoteCharacter = '\0',
      value = {
        "{} # 1 # the field \"card\" is missing; write its name",
        "{ 'card': 'x' } # 1 # the field \"families\" is missing; write a list of families with their lines",
        "{ 'card': 'x', 'families': [] } # 0 # the card has no lines; write at least one",
        "{ 'card': 'x', 'families': [ { 'family': 'A', 'lines': [] } ] } # 0 # the card has no lines",
        "{ 'card': 'x', 'families': {} } # 28 # \"families\" is a list in square brackets, not an object in braces",
        "{ 'card': ' ', 'families': [] } # 11 # the card's name is empty; reports need one",
        "{ 'card': 5, 'families': [] } # 11 # \"card\" is a text in double quotes, not a whole number",
        "{ 'card': 'x', 'editoin': '', 'families': [] } # 16 # unknown field \"editoin\" in a card; did you mean \"edition\"? (known: card, edition, families)",
        "{ 'card': 'x', 'families': [ { 'lines': [] } ] } # 30 # the field \"family\" is missing",
        "{ 'card': 'x', 'families': [ { 'family': '', 'lines': [] } ] } # 42 # the family's name is empty",
        "{ 'card': 'x', 'families': [ { 'family': 'A' } ] } # 30 # the field \"lines\" is missing; write the list of its lines",
        "{ 'card': 'x', 'families': [ { 'family': 'A', 'lines': [], 'note': 1 } ] } # 60 # unknown field \"note\" in a family (known: family, lines)",
        "{ 'card': 'x', 'families': [ { 'family': 'A', 'lines': [] }, { 'family': 'A', 'lines': [] } ] } # 74 # the family \"A\" is there twice; put its lines together",
        "[] # 1 # a card is an object in braces, not a list in square brackets",
      })
  void card_withAFault_namesPlaceAndRemedy(String text, int column, String message) {
    CardReading reading = CardFile.json("c.json", text.replace('\'', '"'));
    assertThat(reading.card() == null).as("refused").isTrue();
    Fault fault = reading.faults().get(0);
    assertThat(fault.message()).contains(message);
    assertThat(fault.column()).isEqualTo(column);
    assertThat(fault.line()).isEqualTo(column == 0 ? 0 : 1);
  }

  @Test
  void id_writtenTwice_isNamedWithTheLineThatHasIt() {
    CardReading reading =
        CardTexts.read(
            "{ \"id\": \"A\", \"tiles\": \"FF 1111b 2222c NNNN\", \"value\": 25 }",
            "{ \"id\": \"A\", \"tiles\": \"FF 1111b 2222c SSSS\", \"value\": 25 }");
    assertThat(CardTexts.text(reading.faults()))
        .isEqualTo("f:3:9 (A): the id \"A\" is used in line 2 already; write another");
  }

  @Test
  void faults_ofAWholeFile_areReportedAtOnceFromTopToBottom() {
    CardReading reading =
        CardFile.json(
            "c.json",
            """
            { "card": "x", "color": "red", "families": [
              { "family": "Ladders", "lines": [
                { "tiles": "FF 1111q 2222c NNNN", "value": 0, "slide": "al" },
                { "tiles": "FF 1111b 2222c NNNN", "value": 25 },
                { "id": "L1", "tiles": ["FF", "GG (R|"], "worth": 25 }
              ] },
              { "family": "Ladders", "lines": [ { "tiles": 5, "value": 25, "where": "n" } ] }
            ] }
            """);
    assertThat(reading.faults().stream().map(f -> f.line() + ":" + f.column() + " " + f.id()))
        .containsExactly(
            "1:16 ",
            "3:24 L1a",
            "3:48 L1a",
            "3:61 L1a",
            "5:5 L1",
            "5:30 L1",
            "5:39 L1",
            "5:46 L1",
            "7:15 ",
            "7:48 L4",
            "7:74 L4");
  }
}
