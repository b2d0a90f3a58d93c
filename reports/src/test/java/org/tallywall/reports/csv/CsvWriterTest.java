package org.tallywall.reports.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.reports.Golden;
import org.tallywall.reports.SampleTables;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;

class CsvWriterTest {
  private static final Column NAME = Column.text("name", "A name.");

  @Test
  void numbers_written_keepEveryDigit() throws IOException {
    Golden.assertSame(CsvWriter.text(SampleTables.ways()), "ways.csv");
  }

  @Test
  void texts_written_areQuotedWhereTheyMustBe() throws IOException {
    Golden.assertSame(CsvWriter.text(SampleTables.awkward()), "awkward.csv");
  }

  @Test
  void table_withoutRows_isItsHeader() {
    assertThat(CsvWriter.text(Table.builder("t", "T").columns(NAME).build())).isEqualTo("name\n");
  }

  @Test
  void emptyField_aloneInItsRow_isQuoted() {
    Table table =
        Table.builder("t", "T").columns(NAME).row(Cell.empty()).row(Cell.text("x")).build();
    assertThat(CsvWriter.text(table)).isEqualTo("name\n\"\"\nx\n");
  }

  @Test
  void writer_given_getsTheSameAndStaysOpen() throws IOException {
    StringWriter out = new StringWriter();
    CsvWriter.write(SampleTables.ways(), out);
    assertThat(out).hasToString(CsvWriter.text(SampleTables.ways()));
  }

  @Test
  void file_written_isUtf8WithoutMark(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("awkward.csv");
    Files.writeString(file, "older");
    CsvWriter.write(SampleTables.awkward(), file);
    assertThat(Files.readString(file)).isEqualTo(CsvWriter.text(SampleTables.awkward()));
    assertThat(folder).isDirectoryContaining(f -> f.equals(file));
    assertThat(folder.toFile().list()).containsExactly("awkward.csv");
  }

  @Test
  void link_inTheWay_isNotFollowed(@TempDir Path folder) throws IOException {
    Path other = Files.writeString(folder.resolve("other"), "mine");
    Files.createSymbolicLink(folder.resolve("ways.csv.part"), other);
    CsvWriter.write(SampleTables.ways(), folder.resolve("ways.csv"));
    assertThat(other).hasContent("mine");
    assertThat(folder.resolve("ways.csv")).hasContent(CsvWriter.text(SampleTables.ways()));
    assertThat(Files.isSymbolicLink(folder.resolve("ways.csv"))).isFalse();
  }

  @Test
  void file_thatCannotBeWritten_leavesNothingBehind(@TempDir Path folder) throws IOException {
    Path taken = Files.createDirectories(folder.resolve("taken.csv").resolve("inside"));
    assertThatThrownBy(() -> CsvWriter.write(SampleTables.ways(), taken.getParent()))
        .isInstanceOf(IOException.class);
    assertThat(folder.toFile().list()).containsExactly("taken.csv");
  }
}
