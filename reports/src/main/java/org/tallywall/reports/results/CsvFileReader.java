package org.tallywall.reports.results;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.reports.csv.CsvCell;
import org.tallywall.reports.table.Visible;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;

/** Reads files of comma-separated values as the program writes them. */
final class CsvFileReader {
  /** So many rows fill more paper than anybody reads. */
  static final int MOST_ROWS = 50_000;

  /** Longer than any name, sentence or command that the program writes. */
  static final int MOST_LETTERS = 10_000;

  private static final CsvMapper MAPPER =
      CsvMapper.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();

  private final String file;
  private final List<List<String>> lines = new ArrayList<>();

  private CsvFileReader(String file) {
    this.file = file;
  }

  /**
   * Reads a file and judges it by what is known of its columns.
   *
   * @param file the file, which exists
   * @param name what it is called, without its ending
   * @return its columns and rows
   * @throws WrongResultsException if it is not such a file, larger than the program reads, or holds
   *     what cannot be
   */
  static CsvFile read(Path file, String name) {
    CsvFileReader reader = new CsvFileReader(file.toString());
    reader.lines(WholeText.read(file));
    List<List<String>> lines = reader.lines;
    if (lines.isEmpty()) {
      throw new WrongResultsException(
          "\""
              + Visible.line(reader.file)
              + "\" is empty; a line of column names is expected"
              + CsvFile.REMEDY);
    }
    CsvFile csv = new CsvFile(reader.file, lines.get(0), lines.subList(1, lines.size()));
    CsvCheck.of(csv, name);
    return csv;
  }

  private void lines(String text) {
    try (MappingIterator<String[]> all = MAPPER.readerFor(String[].class).readValues(text)) {
      while (all.hasNext()) {
        String[] cells = all.next();
        if (lines.size() > MOST_ROWS) {
          throw after("the file has more rows than this program reads (50,000)");
        }
        for (String cell : cells) {
          if (cell.length() > MOST_LETTERS) {
            throw after("a cell is longer than this program reads (10,000 letters)");
          }
        }
        lines.add(Arrays.stream(cells).map(CsvCell::read).toList());
      }
    } catch (JacksonException broken) {
      throw after("this is not a file of comma-separated values; was it cut off?");
    }
  }

  private WrongResultsException after(String what) {
    return new WrongResultsException(
        "\"%s\", after line %s: %s%s"
            .formatted(Visible.line(file), lines.size(), what, CsvFile.REMEDY));
  }
}
