package org.tallywall.reports.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.reports.Golden;
import org.tallywall.reports.SampleTables;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

class TextTableTest {

  @ParameterizedTest
  @ValueSource(ints = {40, 80, 120})
  void table_atSomeWidth_isLaidOutForIt(int width) throws IOException {
    Golden.assertSame(TextTable.text(SampleTables.ways(), width), "ways-" + width + ".txt");
  }

  @Test
  void texts_inAscii_loseWhatConsolesCannotShow() throws IOException {
    String text = TextTable.text(SampleTables.awkward(), 60);
    assertThat(text).matches("[\\x20-\\x7e\\n]*");
    Golden.assertSame(text, "awkward-ascii.txt");
  }

  @Test
  void texts_inUnicode_keepTheirLettersButNoControls() throws IOException {
    String text = TextTable.text(SampleTables.awkward(), 60, Lettering.UNICODE);
    assertThat(text).doesNotContain("\u001b", "\u0007", "\r", "\t");
    Golden.assertSame(text, "awkward-unicode.txt");
  }

  @Test
  void lines_atAnyWidth_fitAndEndWithoutBlanks() {
    for (Table table : List.of(SampleTables.ways(), SampleTables.awkward(), wide())) {
      for (int width = TextTable.LEAST_WIDTH; width <= 160; width++) {
        for (String line : TextTable.text(table, width).split("\n")) {
          assertThat(line.length()).as("'%s' at %d", line, width).isLessThanOrEqualTo(width);
          assertThat(line).doesNotEndWith(" ");
        }
      }
    }
  }

  @Test
  void numbers_whereTheFirstColumnLeavesRoom_areNeverCut() {
    for (int width = 50; width <= 160; width++) {
      String text = TextTable.text(SampleTables.ways(), width);
      List<Column> columns = SampleTables.ways().columns();
      for (List<Cell> row : SampleTables.ways().rows()) {
        for (int i = 0; i < columns.size(); i++) {
          if (columns.get(i).type().isNumber()) {
            assertThat(text).contains(CellText.of(columns.get(i), row.get(i)));
          }
        }
      }
    }
  }

  @Test
  void table_withoutRows_saysSo() {
    Table table = Table.builder("t", "Nothing yet").columns(Column.text("line", "A line.")).build();
    assertThat(TextTable.text(table, 40)).isEqualTo("Nothing yet\n\nline\n----\n(no rows)\n");
  }

  @Test
  void console_tooNarrow_isRefused() {
    assertThatThrownBy(() -> TextTable.text(SampleTables.ways(), 39))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a table needs at least 40 letters a line, not 39");
  }

  @ParameterizedTest
  @CsvSource({
    "Übung & Spiel, Ubung & Spiel",
    "Straße – Ærø, Strasse - AEro",
    "“so” ‘too’…, \"so\" 'too'...",
    "3 × 4, 3 x 4",
    "雀, ?"
  })
  void letters_withoutAPlainForm_becomeQuestionMarks(String text, String plain) {
    assertThat(Lettering.ASCII.line(text)).isEqualTo(plain);
  }

  @Test
  void words_longerThanALine_areBrokenBetweenLetters() {
    assertThat(Wrap.lines("a 𝒜𝒜𝒜𝒜𝒜 b", 2)).containsExactly("a", "𝒜𝒜", "𝒜𝒜", "𝒜", "b");
    assertThat(Wrap.lines("", 5)).containsExactly("");
    assertThat(Wrap.lines("5 % of 6 %", 5)).containsExactly("5 %", "of", "6 %");
  }

  /**
   * Thirty columns of numbers behind a first column that is itself too wide for a narrow console.
   */
  private static Table wide() {
    TableBuilder table =
        Table.builder("wide", "A wide table")
            .columns(Column.decimalInterval("first", "points", "The first of many columns."));
    List<Cell> row = new ArrayList<>(List.of(Cell.interval(1e9, -1.25e9, 3.5e9)));
    for (int i = 1; i <= 30; i++) {
      table.columns(Column.integer("column-" + i, "tiles", "A column.").headed("incomprehensibly"));
      row.add(Cell.whole(i * 1_000_003L));
    }
    return table.row(row).build();
  }
}
