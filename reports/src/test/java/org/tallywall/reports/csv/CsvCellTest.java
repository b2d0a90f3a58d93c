package org.tallywall.reports.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Names that somebody else typed, in a file that a spreadsheet opens and the program reads again.
 */
class CsvCellTest {
  private static final List<String> PIECES =
      List.of(
          "'",
          "=",
          "+",
          "-",
          "@",
          "\t",
          "\r",
          "\n",
          "1",
          ".",
          "a",
          "\\",
          "u{",
          "5c}",
          "1b}",
          "}",
          "\u001b",
          "\u202e",
          "\u2028",
          "\ud800",
          "\udc00",
          "\ud83c\udc04",
          "");

  /** All texts of up to four pieces: each comes back, none is a formula, none has a second line. */
  @Test
  void text_whateverItIs_comesBackAndIsHarmless() {
    Map<String, String> seen = new HashMap<>();
    for (String text : texts()) {
      String written = CsvCell.written(text);
      assertThat(CsvCell.read(written)).isEqualTo(text);
      assertThat(seen.put(written, text)).as(written).isIn(null, text);
      assertThat(written).doesNotContain("\n", "\r", "\t", "\u001b", "\u202e", "\u2028");
      if (written.matches("[-=+@].*")) {
        assertThat(written).matches("[-+]?[0-9]+(\\.[0-9]+)?");
      }
    }
  }

  private static List<String> texts() {
    List<String> texts = new ArrayList<>(List.of(""));
    for (int length = 0; length < 4; length++) {
      List<String> longer = new ArrayList<>();
      for (String text : texts) {
        PIECES.forEach(piece -> longer.add(text + piece));
      }
      texts = longer;
    }
    return texts;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "hold back, then play on",
        "-3",
        "-0.25",
        "+1",
        "0",
        "it's",
        "'tis",
        "NO_CLAIM",
        "C:\\users",
        "“so”",
        "FF 1111x",
        "雀 é",
        "a=b",
        "1-2",
        "#hash",
        "|",
        ""
      })
  void text_asPeopleWrite_staysAsItIs(String text) {
    assertThat(CsvCell.written(text)).isEqualTo(text);
  }

  @Test
  void formula_inACell_getsAnApostropheAndOneMoreEachTime() {
    assertThat(CsvCell.written("=1+2")).isEqualTo("'=1+2");
    assertThat(CsvCell.written("'=1+2")).isEqualTo("''=1+2");
    assertThat(CsvCell.written("-1+cmd|' /C calc'!A0")).isEqualTo("'-1+cmd|' /C calc'!A0");
    assertThat(CsvCell.written("@SUM(A1)")).isEqualTo("'@SUM(A1)");
    assertThat(CsvCell.written("two\nlines\u001b[2J")).isEqualTo("two\\u{a}lines\\u{1b}[2J");
    assertThat(CsvCell.written("\ud800")).isNotEqualTo(CsvCell.written("\ud801"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\\u{}", "\\u{110000}", "\\u{41}", "\\u{1B}", "\\u{001b}", "\\u{ffffff}"})
  void number_thatIsNoneOfAnUnseenLetter_isLeftAlone(String cell) {
    assertThat(CsvCell.read(cell)).isEqualTo(cell);
  }
}
