package org.tallywall.reports.markdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.reports.Golden;
import org.tallywall.reports.SampleTables;
import org.tallywall.reports.table.Table;

class MarkdownWriterTest {

  @Test
  void numbers_written_areRounded() throws IOException {
    Golden.assertSame(MarkdownWriter.text(SampleTables.ways(), 2), "ways.md");
  }

  @Test
  void texts_written_standAsThemselves() throws IOException {
    Golden.assertSame(MarkdownWriter.text(SampleTables.awkward(), 2), "awkward.md");
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 7})
  void heading_ofNoSuchLevel_isRefused(int level) {
    assertThatThrownBy(() -> MarkdownWriter.text(SampleTables.ways(), level))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a heading's level goes from 1 to 6, not " + level);
  }

  /** What would open a list or underline a heading (CommonMark 0.31, sections 4.3 and 5.2). */
  @ParameterizedTest
  @CsvSource({
    "- a, \\- a",
    "+ a, \\+ a",
    "12. a, 12\\. a",
    "3) a, 3\\) a",
    "===, \\===",
    "a - b, a - b"
  })
  void paragraph_thatLooksLikeAList_isText(String text, String escaped) {
    assertThat(MarkdownText.paragraph(text)).isEqualTo(escaped);
  }

  @Test
  void page_ofColumns_explainsEachInEveryFile() throws IOException {
    Golden.assertSame(
        ColumnsPage.text(List.of(SampleTables.ways(), SampleTables.awkward())), "columns.md");
  }

  @Test
  void page_withTwoFilesOfOneName_isRefused() {
    List<Table> twice = List.of(SampleTables.ways(), SampleTables.ways());
    assertThatThrownBy(() -> ColumnsPage.text(twice))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("two tables are both named ways");
  }
}
