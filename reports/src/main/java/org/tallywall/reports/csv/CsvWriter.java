package org.tallywall.reports.csv;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.NumberText;
import org.tallywall.reports.table.Table;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;
import tools.jackson.dataformat.csv.CsvWriteFeature;

/**
 * Writes a table as comma-separated values: RFC 4180 with {@code \n} between lines, UTF-8, a header
 * row of column names, every digit of every number, nothing between the commas where there is no
 * value. An estimate with its interval takes three columns (see {@link Table#spread()}). Title and
 * notes are left out, because a comma-separated file has no place for them.
 *
 * <p>Texts are written as {@link CsvCell} says: harmless in a spreadsheet, a row in one line.
 */
public final class CsvWriter {
  private CsvWriter() {}

  /**
   * Gives the whole file as text.
   *
   * @param table the table
   * @return its lines, each ended by {@code \n}
   */
  public static String text(Table table) {
    Table plain = table.spread();
    List<List<String>> lines = new ArrayList<>();
    lines.add(plain.columns().stream().map(Column::name).toList());
    plain.rows().forEach(row -> lines.add(row.stream().map(CsvWriter::field).toList()));
    return writerFor(plain).writeValueAsString(lines);
  }

  /**
   * Writes the file to a stream of characters, which stays open.
   *
   * @param table the table
   * @param out where to write
   * @throws IOException if writing fails
   */
  public static void write(Table table, Writer out) throws IOException {
    out.write(text(table));
    out.flush();
  }

  /**
   * Writes the file, whole or not at all: it grows under the name {@code NAME.part} and takes its
   * own when complete, in place of an older one. A link of that name is not followed.
   *
   * @param table the table
   * @param file the file; its folder exists
   * @throws IOException if writing fails, with nothing left behind
   */
  public static void write(Table table, Path file) throws IOException {
    Path part = file.resolveSibling(file.getFileName() + ".part");
    try {
      Files.deleteIfExists(part);
      byte[] bytes = text(table).getBytes(StandardCharsets.UTF_8);
      Files.write(part, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  private static String field(Cell cell) {
    if (cell instanceof Cell.Text text) {
      return CsvCell.written(text.value());
    }
    if (cell instanceof Cell.Whole number) {
      return Long.toString(number.value());
    }
    return cell instanceof Cell.Decimal number ? NumberText.of(number.value()) : "";
  }

  /**
   * Texts are quoted only where they must be. Not so in a table of one column: there an empty field
   * must be quoted, because readers skip a line of nothing, and the library does not do both.
   */
  private static ObjectWriter writerFor(Table table) {
    CsvWriteFeature quoting =
        table.columns().size() == 1
            ? CsvWriteFeature.ALWAYS_QUOTE_EMPTY_STRINGS
            : CsvWriteFeature.STRICT_CHECK_FOR_QUOTING;
    return CsvMapper.builder()
        .enable(quoting)
        .build()
        .writer(CsvSchema.emptySchema().withLineSeparator("\n"));
  }
}
