package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cards as spreadsheets save them. */
class CsvCardTest {
  private static final String HEADER =
      "family,id,tiles,slide,where,suits,value,concealed,jokers,jokerless,say\n";

  private static Card card(String text) {
    CardReading reading = CardFile.csv("c.csv", "Quay", text);
    assertThat(CardTexts.text(reading.faults())).isEmpty();
    return reading.orThrow();
  }

  @Test
  void row_withEveryColumn_isReadAsTyped() {
    Card card =
        card(
            HEADER
                + "Tens,T9,FFFF nnnx mmmy 10z 10z,ANY,\"nm: 19,28\",Or One,35,yes,no,TRUE,"
                + "\"the \"\"scales\"\", old\"\n");
    Line line = card.lines().get(0);
    assertThat(card.name()).isEqualTo("Quay");
    assertThat(card.edition()).isEmpty();
    assertThat(line.id()).isEqualTo("T9");
    assertThat(line.family()).isEqualTo("Tens");
    assertThat(line.say()).isEqualTo("the \"scales\", old");
    assertThat(line.terms()).isEqualTo(new Terms(35, true, false, true));
    assertThat(line.printed())
        .isEqualTo(
            new Printed(
                List.of("FFFF nnnx mmmy 10z 10z"),
                Slide.ANY,
                new Where("nm", List.of(List.of(1, 9), List.of(2, 8))),
                SuitChoice.OR_ONE));
  }

  @Test
  void row_withEmptyCells_hasTheDefaults() {
    Line line = card(HEADER + "Ladders,,FF 1111b 2222c NNNN,,,,25,,,,\n").lines().get(0);
    assertThat(line.id()).isEqualTo("L1");
    assertThat(line.terms()).isEqualTo(new Terms(25, false, true, true));
    assertThat(line.printed().slide()).isEqualTo(Slide.NONE);
    assertThat(line.say()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void file_withAnySeparatorAndLineEnd_givesTheSameCard(String separator) {
    String text =
        """
        value|family|tiles|id
        25|Ladders|FF 1111b 2222c NNNN|A
        ||||

        30|Tens|FF 1111b 2222c SSSS|B
        """;
    Card plain = card(text.replace("|", separator));
    assertThat(plain.lines()).extracting(Line::id).containsExactly("A", "B");
    assertThat(card(text.replace("|", separator).replace("\n", "\r\n")).digest())
        .isEqualTo(plain.digest());
    assertThat(
            card("\""
                    + text.strip()
                        .replace("|", "\"|\"")
                        .replace("\n", "\"\n\"")
                        .replace("|", separator)
                    + "\"")
                .digest())
        .isEqualTo(plain.digest());
  }

  @ParameterizedTest
  @CsvSource({
    "TRUE,true",
    "true,true",
    "True,true",
    "FALSE,false",
    "yes,true",
    "YES,true",
    "no,false",
    "C,true",
    "c,true",
    "y,true",
    "Y,true",
    "N,false",
    "' yes ',true",
    "'',false"
  })
  void concealed_inAnySpelling_isUnderstood(String cell, boolean concealed) {
    Card card = card("family,tiles,value,concealed\nA,FF 1111b 2222c NNNN,25," + cell + "\n");
    assertThat(card.lines().get(0).concealed()).isEqualTo(concealed);
  }

  /** Beside a C, or under X/C, an X is an exposed hand. */
  @ParameterizedTest
  @CsvSource({"concealed,true", "Concealed,true", "X/C,true", "c/x,true", "X/C,false"})
  void concealed_inTheLettersOfTheTable_isUnderstood(String column, boolean both) {
    Card card =
        card(
            "family,tiles,value,%s\nA,FF 1111b 2222c NNNN,25,X\nA,FF 1111b 2222c SSSS,25,%s\n"
                .formatted(column, both ? "C" : "yes"));
    assertThat(card.lines()).extracting(Line::concealed).containsExactly(false, true);
  }

  @ParameterizedTest
  @CsvSource({"y,true", "Yes,true", "n,false", "'',true"})
  void jokers_inAnySpelling_areUnderstood(String cell, boolean jokers) {
    Card card = card("family,tiles,value,jokers\nA,FF 1111b 2222c NNNN,25," + cell + "\n");
    assertThat(card.lines().get(0).terms().jokers()).isEqualTo(jokers);
  }

  /** The first filled cell of its column, also in a row of its own; else the file's name. */
  @Test
  void title_inAColumnOfItsOwn_isTheCardsName() {
    String rows = "FF 1111b 2222c NNNN,25,A,%s\nFF 1111b 2222c SSSS,25,A,%s\n";
    assertThat(card("tiles,value,family,card\n" + rows.formatted("Harbor", "")).name())
        .isEqualTo("Harbor");
    assertThat(card("tiles,value,family,Title\n" + rows.formatted("", "Harbor")).name())
        .isEqualTo("Harbor");
    assertThat(card("tiles,value,family,card\n" + rows.formatted("", "")).name()).isEqualTo("Quay");
    Card apart = card("tiles,value,family,card\n,,,Harbor\n" + rows.formatted("", ""));
    assertThat(apart.name()).isEqualTo("Harbor");
    assertThat(apart.lines()).hasSize(2);
  }

  @Test
  void alternatives_separatedOutsideBrackets_areOneLine() {
    Card card =
        card(
            "family,tiles,value\n"
                + "A,FF 1111b 2222c (NNNN|SSSS) | FF 1111b 2222c RRRR|FF 1111b 2222c (GG GG|0000),25\n");
    assertThat(card.lines().get(0).printed().tiles())
        .containsExactly(
            "FF 1111b 2222c (NNNN|SSSS)", "FF 1111b 2222c RRRR", "FF 1111b 2222c (GG GG|0000)");
    assertThat(CardTexts.words(card.lines().get(0)))
        .containsExactly(
            "1111b 2222c NNNN FF",
            "1111b 2222c SSSS FF",
            "1111b 2222c RRRR FF",
            "1111b 2222c GG GG FF",
            "1111b 2222c 0000 FF");
  }

  @Test
  void columns_withOtherCommonNames_areTheSameCard() {
    String row = "Ladders,FF 1111b 2222c NNNN,25,the first\n";
    Card plain = card("family,tiles,value,say\n" + row);
    assertThat(card("Section,Hand,Points,Note\n" + row).digest()).isEqualTo(plain.digest());
    assertThat(card("section,hand,points,nickname\n" + row).digest()).isEqualTo(plain.digest());
  }

  @Test
  void value_underAnotherName_isFaultedByThatName() {
    CardReading reading =
        CardFile.csv("c.csv", "Quay", "family,tiles,points\nA,FF 1111b 2222c NNNN,x\n");
    assertThat(CardTexts.text(reading.faults()))
        .contains("\"points\" is a whole number from 1 to 1000000, not \"x\"");
  }

  @ParameterizedTest
  @ValueSource(strings = {"25", "$25", "$ 25", "$25.00", "25.0", "25¢", "25 ¢", "'25,00'"})
  void value_asACellForMoneyShowsIt_isTheNumber(String cell) {
    Card card = card("family;tiles;value\nA;FF 1111b 2222c NNNN;" + cell.replace("'", "\"") + "\n");
    assertThat(card.lines().get(0).value()).isEqualTo(25);
  }

  /** As whoever writes a spreadsheet names a section once and leaves the cells below empty. */
  @Test
  void rowWithoutAFamily_takesTheOneAbove() {
    Card card =
        card(
            """
            family,tiles,value
            A,FF 1111b 2222c NNNN,25
            ,FF 1111b 2222c SSSS,25
            B,FF 1111b 2222c EEEE,25

            ,FF 1111b 2222c WWWW,25
            """);
    assertThat(card.lines()).extracting(Line::id).containsExactly("A1", "A2", "B1", "B2");
  }

  @Test
  void rowsOfAFamily_apartFromOneAnother_areGatheredInTheirFamily() {
    Card card =
        card(
            """
            family,tiles,value
            A,FF 1111b 2222c NNNN,25
            B,FF 1111b 2222c SSSS,25
            A,FF 1111b 2222c EEEE,25
            """);
    assertThat(card.families()).extracting(Family::name).containsExactly("A", "B");
    assertThat(card.lines()).extracting(Line::id).containsExactly("A1", "A2", "B1");
  }
}
