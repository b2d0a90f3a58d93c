package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.text.Fault;

/**
 * Cards that would fill any memory, or take for ever, are refused with the bound. The time limits
 * are there for what would hang without it.
 */
@Timeout(60)
class CardLimitsTest {
  private static final String TEN = "(FF|NN|EE|WW|SS|RR|GG|00|11z|22z)";

  private static String line(String tiles) {
    return "{\"tiles\": \"" + tiles + "\", \"value\": 25}";
  }

  private static String card(String lines) {
    return "{\"card\": \"Quay\", \"families\": [{\"family\": \"A\",\n\"lines\": [\n"
        + lines
        + "]}]}";
  }

  private static CardReading read(String lines) {
    return CardFile.json("c.json", card(lines));
  }

  @Test
  void line_ofFourBracketsOfTen_isRefusedWithTheMostHandsItMayPrint() {
    CardReading card = read(line("nnnx mmmy " + (TEN + " ").repeat(4).strip()));
    assertThat(card.faults()).hasSize(1);
    assertThat(card.faults().get(0).text("c.json"))
        .startsWith("c.json:3:12 (A1): ")
        .endsWith("the brackets give more than 1000 hands; split the line")
        .hasSizeLessThan(300);
  }

  @Test
  void line_ofThreeBracketsOfTenAndOpenNumbers_isRefusedWithItsMostWays() {
    CardReading card =
        read(line("nnnx mmmy FF " + (TEN + " ").repeat(3).replace("z", "b").strip()));
    assertThat(card.faults()).hasSize(1);
    assertThat(card.faults().get(0).message()).startsWith("more than 50000 ways to make this line");
  }

  /** Each hand alone is within the bounds; all of them are not. */
  @Test
  void line_ofManyAlternatives_isRefusedWithTheMostHandsItMayPrint() {
    String hand = "\"FF 1111b 2222c NNNN\",";
    CardReading card = read("{\"tiles\": [" + hand.repeat(1001) + "], \"value\": 25}");
    assertThat(card.faults()).hasSize(1);
    assertThat(card.faults().get(0).message()).startsWith("a line prints at most 1000 hands");
    CardReading most = read("{\"tiles\": [" + hand.repeat(1000) + "], \"value\": 25}");
    assertThat(most.orThrow().lines().get(0).patterns()).hasSize(1000);
  }

  @Test
  void card_ofManyLinesWithOpenNumbers_isRefusedWithItsMostWays() {
    String lines = (line("nnnnx mmmy kkkkz FFF") + ",\n").repeat(900);
    CardReading card = read(lines);
    assertThat(card.faults()).hasSize(1);
    Fault fault = card.faults().get(0);
    assertThat(fault.message())
        .startsWith("with this line there are more than 100000 ways to make the lines of the card");
    assertThat(fault.line()).as("22 lines of 4,374 ways each are within the bound").isEqualTo(25);
  }

  @Test
  void card_ofMoreLinesThanAreRead_isRefusedWithTheBound() {
    String lines = (line("nnnnx mmmy kkkkz FFF") + ",\n").repeat(5000);
    assertThat(read(lines).faults())
        .extracting(Fault::message)
        .anyMatch(said -> said.startsWith("a card has at most 1000 lines; this one and those"));
    String rows = "A,FF 1111b 2222c NNNN,25\n".repeat(5000);
    assertThat(CardFile.csv("c.csv", "Quay", "family,tiles,value\n" + rows).faults())
        .extracting(Fault::message)
        .containsExactly(
            "a card has at most 1000 lines; this one and those after it were not read");
  }

  @Test
  void card_ofSeventyThousandFamilies_isRefusedWithTheBound() {
    String families =
        IntStream.range(0, 70_000)
            .mapToObj(
                at ->
                    "{\"family\": \""
                        + "!".repeat(at % 300 + 1)
                        + "?".repeat(at / 300)
                        + "\", \"lines\": []}")
            .collect(Collectors.joining(","));
    CardReading card =
        CardFile.json("c.json", "{\"card\": \"Quay\", \"families\": [" + families + "]}");
    assertThat(card.faults())
        .extracting(Fault::message)
        .containsExactly(
            "a card has at most 1000 families; this one and those after it were not read");
  }

  @Test
  void card_ofAMillionFaults_tellsTheFirst() {
    String rows = "A,FF,0\n".repeat(900);
    CardReading card = CardFile.csv("c.csv", "Quay", "family,tiles,value\n" + rows);
    assertThat(card.faultCount()).isEqualTo(1800);
    assertThat(card.faults()).hasSize(51);
    assertThat(card.faults().get(50).message()).startsWith("and 1750 more faults");
  }

  @ParameterizedTest
  @CsvSource({
    "card, the card's name has at most 500 characters",
    "edition, the edition has at most 500 characters",
    "family, a family's name has at most 500 characters",
    "id, an id has at most 500 characters",
    "say, \"say\" has at most 500 characters",
    "tiles, a hand has at most 4000 characters",
    "where, \"where\" has at most 4000 characters",
    "slide, slide",
    "suits, suits",
  })
  void text_ofTenMillionCharacters_isAShortFault(String field, String said) {
    String text =
        ("{\"card\": \"c\", \"edition\": \"e\", \"families\": [{\"family\": \"A\", \"lines\": [{"
                + "\"id\": \"i\", \"say\": \"s\", \"tiles\": \"FF 1111b 2222c NNNN\", \"slide\": \"none\","
                + " \"where\": \"\", \"suits\": \"as written\", \"value\": 25}]}]}")
            .replaceFirst(
                "\"" + field + "\": \"[^\"]*\"",
                "\"" + field + "\": \"" + "7".repeat(10_000_000) + "\"");
    CardReading card = CardFile.json("c.json", text);
    assertThat(card.faults()).isNotEmpty().allMatch(fault -> fault.text("c.json").length() < 400);
    assertThat(card.faults().get(0).message()).contains(said);
  }

  /** The ways are counted without making a hand; by hand they are as many. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1111x 22y 333x 444z 5y | none   |              | as written | 6
          1111x 22y 333x 444z 5y | none   |              | or one     | 9
          1111x 22y 333x 444z 5y | any    |              | as written | 30
          1111x 22y 333x 444z 5y | by-two |              | as written | 18
          nnnnx mmmy kkkkz FFF   | none   |              | as written | 4374
          nnnnx mmmy kkkkz FFF   | none   | nm: 19 28 37 | as written | 162
          nnnnx mmmy kkkkz FFF   | none   | nmk: 123     | or one     | 9
          uuuu vvvv FFFFFF       | none   |              | as written | 12
          uuuu FFFF FFFFFF       | none   |              | as written | 4
          2222b 222x FFFFFFF     | none   |              | as written | 2
          2222b 222c 333x FFFF   | none   |              | or one     | 1
          NNNN EEEE WWWW FF      | none   |              | or one     | 1
          """)
  void ways_ofAHand_areThoseCountedByHand(
      String tiles, String slide, String where, String suits, long ways) {
    HandPattern pattern = PatternText.read(tiles.replace("FFFFFFF", "FFFF FFF")).get(0);
    Slide moved =
        java.util.Arrays.stream(Slide.values())
            .filter(s -> s.text().equals(slide))
            .findFirst()
            .get();
    SuitChoice choice = suits.equals("or one") ? SuitChoice.OR_ONE : SuitChoice.AS_WRITTEN;
    Where figures = Where.read(where == null ? "" : where);
    assertThat(Expansion.ways(pattern, moved, figures, choice)).isEqualTo(ways);
    assertThat(Expansion.of(pattern, moved, figures, choice)).hasSizeLessThanOrEqualTo((int) ways);
  }
}
