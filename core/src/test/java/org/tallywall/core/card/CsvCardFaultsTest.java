package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faults of a spreadsheet, each with row, column, line id and remedy. */
class CsvCardFaultsTest {
  private static String faults(String text) {
    CardReading reading = CardFile.csv("c.csv", "Quay", text);
    assertThat(reading.card() == null).as("refused").isTrue();
    return CardTexts.text(reading.faults());
  }

  /** The row stands second in the file; columns count from 1. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      quoteCharacter = '\0',
      value = {
        "A,FF 1111q 2222c NNNN,25      # 2:10 (A1): \"1111q\" at character 8: there is no \"q\" on a card",
        "A,\"FF 1111q 2222c NNNN\",25  # 2:11 (A1): \"1111q\" at character 8: there is no \"q\" on a card",
        "A,FF 1111b 2222c NNNN|FF,25   # 2:23 (A1): \"FF\": these are 2 tiles; a hand has 14",
        "A,FF 1111b 2222c NNNN|,25     # 2:23 (A1): \"\": these are 0 tiles; a hand has 14",
        "A,,25                         # 2:1 (A1): the line has no tiles; write one hand of 14 tiles",
        "A                             # 2:1 (A1): the line has no tiles; write one hand of 14 tiles",
        "A,FF 1111b 2222c NNNN,        # 2:1 (A1): this line has no value (points); write a number, as in 25",
        "A,FF 1111b 2222c NNNN,6O      # 2:23 (A1): \"value\" is a whole number from 1 to 1000000, not \"6O\"; is the last sign the letter O? write 0",
        "A,FF 1111b NNNN or SSSS,25    # 2:17 (A1): \"or\" at character 15: for a choice write (NNNN|SSSS)",
        "A,FF 1111b 2222c NNNN,25,X    # 2:26 (A1): \"x\" may be a tick or a cross; write yes or no, or call the column X/C",
        "A,FF 1111b 2222c NNNN,2.5     # 2:23 (A1): \"value\" is a whole number from 1 to 1000000, not \"2.5\"",
        "A,FF 1111b 2222c NNNN,$2.50   # 2:23 (A1): \"value\" is a whole number from 1 to 1000000, not \"$2.50\"",
        "A,FF 1111b 2222c NNNN,$       # 2:23 (A1): \"value\" is a whole number from 1 to 1000000, not \"$\"",
        "A,FF 1111b 2222c NNNN,0       # 2:23 (A1): \"value\" is a whole number from 1 to 1000000, not \"0\"",
        "A,FF 1111b 2222c NNNN,9999999999 # 2:23 (A1): \"value\" is a whole number from 1",
        "A,FF 1111b 2222c NNNN,25,maybe # 2:26 (A1): \"concealed\" is TRUE or FALSE, yes or no, C or X; not \"maybe\"",
        "A,FF 1111b 2222c NNNN,25,,X   # 2:27 (A1): \"x\" may be a tick or a cross; write yes or no",
        "A,FF 1111b 2222c NNNN,25,,,on # 2:28 (A1): slide \"on\" is unknown; write one of none, any, by-two",
        "A,FF 1111b 2222c NNNN,25,,,,n # 2:29 (A1): where: \"n\" at character 1: write letters of n, m, k",
        "A,FF 1111b 2222c NNNN,25,,,,,x2 # 2:30 (A1): \"x2\" is under no column; put a cell that contains a separator in quotes",
        ",FF 1111b 2222c NNNN,25       # 2:1: no family is named in this row or above; write one",
        "A,\"FF 1111b,25               # 2:3: this is not CSV: a quoted cell is not closed; write \" at its end",
        "A,\"FF\" 1111b,25             # 2:9: this is not CSV: something follows a cell's closing quote",
      })
  void row_withAFault_namesPlaceIdAndRemedy(String row, String fault) {
    assertThat(faults("family,tiles,value,concealed,jokers,slide,where\n" + row + "\n"))
        .contains("f:" + fault);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      quoteCharacter = '\0',
      value = {
        "family,tiles            # f:1:1: the column \"value\" is missing in the first row",
        "tiles,value             # f:1:1: the column \"family\" is missing in the first row",
        "family,tile,value       # f:1:8: unknown column \"tile\"; did you mean \"tiles\"?",
        "family,tiles,value,tiles # f:1:20: the column \"tiles\" is there twice",
        "family,hand,value,tiles # f:1:19: the columns \"hand\" and \"tiles\" mean the same; take one out",
        "family,tiles,value,note,say # f:1:25: the columns \"note\" and \"say\" mean the same",
        "section,family,tiles,value # f:1:9: the columns \"section\" and \"family\" mean the same",
        "hand,points # f:1:1: the column \"family\" is missing in the first row",
        "A,FF 1111b 2222c NNNN,5 # f:1:1: unknown column \"a\" (known: family,",
        "family,tiles,value,zzzzz # f:1:20: unknown column \"zzzzz\" (known: family, id, tiles, slide, where, suits, value, concealed, jokers, jokerless, say, card, c/x, hand, nickname, note, points, section, title, x/c)",
        "family,tiles,pionts # f:1:14: unknown column \"pionts\"; did you mean \"points\"?",
      })
  void header_withAFault_namesTheColumn(String header, String fault) {
    assertThat(faults(header + "\nA,FF 1111b 2222c NNNN,5\n")).contains(fault);
  }

  @Test
  void column_thatMeansANeededOne_isFaultedOnce() {
    assertThat(faults("family,tiles,values\nA,FF 1111b 2222c NNNN,5\n").lines()).hasSize(1);
    assertThat(faults("sections,tiles,value\nA,FF 1111b 2222c NNNN,5\n").lines()).hasSize(1);
  }

  @Test
  void title_writtenTwice_isFaulted() {
    assertThat(
            faults(
                "card,family,tiles,value\nQuay,A,FF 1111b 2222c NNNN,5\nPier,A,FF 1111b 2222c SSSS,5\n"))
        .isEqualTo(
            "f:3:1: the card has a title further up; leave this cell empty, or write the same");
  }

  @Test
  void file_withoutRows_isRefused() {
    assertThat(faults("")).isEqualTo("f: the file is empty; its first row names the columns");
    assertThat(faults("\n ,\n")).contains("the file is empty; its first row names the columns");
    assertThat(faults("family,tiles,value\n"))
        .isEqualTo("f: the card has no lines; write at least one");
  }

  @Test
  void faults_behindACellOfSeveralRows_areNamedInTheirOwnRow() {
    assertThat(faults("family,say,tiles,value\nA,\"two\nrows\",FF,x\nB,,FG,y\n"))
        .isEqualTo(
            """
            f:3:7 (A1): "FF": these are 2 tiles; a hand has 14
            f:3:10 (A1): "value" is a whole number from 1 to 1000000, not "x"
            f:4:4 (B1): "FG": these are 2 tiles; a hand has 14
            f:4:7 (B1): "value" is a whole number from 1 to 1000000, not "y\"""");
  }
}
