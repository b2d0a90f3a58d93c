package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.text.FaultyFileException;

/** The fields of a card file and what they are when left out. */
class CardFieldsTest {
  @TempDir Path folder;

  @Test
  void card_withEveryField_isReadAsTyped() {
    Card card =
        CardFile.json(
                "c.json",
                """
                // typed from paper
                { "card": "Quay", "edition": "third", "families": [
                  { "family": "Tens", "lines": [
                    { "id": "T9", "say": "the scales", "tiles": "FFFF  nnnx mmmy 10z\\t10z",
                      "where": "nm:19,28  37", "suits": "or one", "slide": "any", "value": 35,
                      "concealed": true, "jokers": false, "jokerless": true, },
                  ] },
                ] }
                """)
            .orThrow();
    assertThat(card.name()).isEqualTo("Quay");
    assertThat(card.edition()).isEqualTo("third");
    Line line = card.line("T9").orElseThrow();
    assertThat(line.family()).isEqualTo("Tens");
    assertThat(line.say()).isEqualTo("the scales");
    assertThat(line.terms()).isEqualTo(new Terms(35, true, false, true));
    assertThat(line.printed())
        .isEqualTo(
            new Printed(
                List.of("FFFF nnnx mmmy 10z 10z"),
                Slide.ANY,
                new Where("nm", List.of(List.of(1, 9), List.of(2, 8), List.of(3, 7))),
                SuitChoice.OR_ONE));
    assertThat(card.line("T8")).isEmpty();
  }

  @Test
  void line_withTheFewestFields_hasTheDefaults() {
    Line line = CardTexts.line("\"tiles\": \"FF 1111b 2222c NNNN\", \"value\": 25");
    assertThat(line.id()).isEqualTo("L1");
    assertThat(line.say()).isEmpty();
    assertThat(line.terms()).isEqualTo(new Terms(25, false, true, true));
    assertThat(line.printed().slide()).isEqualTo(Slide.NONE);
    assertThat(line.printed().where()).isEqualTo(Where.FREE);
    assertThat(line.printed().suits()).isEqualTo(SuitChoice.AS_WRITTEN);
  }

  @Test
  void jokerless_leftOut_isFalseForSinglesAndPairsOnly() {
    assertThat(CardTexts.line("11b 33b 55b 77b 99b NN SS", "none").terms().jokerless()).isFalse();
    assertThat(CardTexts.line("111b 3b 55b 77b 99b NN SS", "none").terms().jokerless()).isTrue();
  }

  @Test
  void alternatives_inAList_makeOneLineOfAllTheirHands() {
    Line line =
        CardTexts.line(
            "\"tiles\": [\"FF 1111b 2222c NNNN\", \"FF 1111b 2222c (SSSS|EEEE)\"], \"value\": 30");
    assertThat(CardTexts.words(line))
        .containsExactly("1111b 2222c NNNN FF", "1111b 2222c SSSS FF", "1111b 2222c EEEE FF");
  }

  @Test
  void faultyCard_asked_throwsWithEveryFault() {
    CardReading reading = CardTexts.read("{ \"value\": 0 }");
    assertThat(reading.card()).isNull();
    assertThatThrownBy(reading::orThrow)
        .isInstanceOf(FaultyFileException.class)
        .hasMessage(
            "probe.json:2:1 (L1): the field \"tiles\" is missing; write its tiles, as in"
                + " \"tiles\": \"FFF 33x 777x 5555y 99z\"\n"
                + "probe.json:2:12 (L1): \"value\" is a whole number from 1 to 1000000, not 0");
  }

  @Test
  void fields_withOtherCommonNames_areTheSameCard() {
    Card plain =
        CardTexts.read("{ \"tiles\": \"FF 1111b 2222c NNNN\", \"value\": 25, \"say\": \"x\" }")
            .orThrow();
    Card other =
        CardFile.json(
                "c.json",
                """
                { "$schema": "card.schema.json", "card": "Probe", "families": [
                  { "section": "Ladders", "lines": [
                    { "hand": "FF 1111b 2222c NNNN", "points": 25, "note": "x" } ] } ] }
                """)
            .orThrow();
    assertThat(other.digest()).isEqualTo(plain.digest());
  }

  @Test
  void field_byTwoOfItsNames_isAFault() {
    CardReading reading =
        CardTexts.read(
            "{ \"tiles\": \"FF 1111b 2222c NNNN\", \"points\": 25, \"value\": 30, \"hand\": \"\" }");
    assertThat(CardTexts.text(reading.faults()))
        .isEqualTo(
            "f:2:49 (L1): \"points\" and \"value\" mean the same; take one out\n"
                + "f:2:62 (L1): \"tiles\" and \"hand\" mean the same; take one out");
  }

  @Test
  void field_underAnotherName_isFaultedByThatName() {
    CardReading reading = CardTexts.read("{ \"tiles\": \"FF 1111b 2222c NNNN\", \"points\": 2.5 }");
    assertThat(CardTexts.text(reading.faults()))
        .isEqualTo("f:2:45 (L1): \"points\" is a whole number from 1 to 1000000, not 2.5");
  }

  @Test
  void spreadsheetsOwnFile_isToBeSavedAsCsv() throws IOException {
    Path sheet = Files.writeString(folder.resolve("card.xlsx"), "PK\u0003\u0004");
    assertThat(CardTexts.text(CardFile.read(sheet).faults()))
        .isEqualTo("f: this is a spreadsheet, not plain text; save it as CSV (UTF-8)");
  }

  @Test
  void file_named_isReadByItsEnding() throws IOException {
    Path json = folder.resolve("quay.json");
    Files.writeString(
        json, CardTexts.json("{ \"tiles\": \"FF 1111b 2222c NNNN\", \"value\": 25 }"));
    Path csv = folder.resolve("Our Quay.CSV");
    Files.writeString(csv, "\uFEFFfamily;tiles;value\r\nLadders;FF 1111b 2222c NNNN;25\r\n");
    assertThat(CardFile.read(json).orThrow().name()).isEqualTo("Probe");
    assertThat(CardFile.read(csv).orThrow().name()).isEqualTo("Our Quay");
    assertThat(CardFile.read(folder.resolve("none.json")).faults())
        .singleElement()
        .satisfies(fault -> assertThat(fault.message()).startsWith("there is no such file"));
  }
}
