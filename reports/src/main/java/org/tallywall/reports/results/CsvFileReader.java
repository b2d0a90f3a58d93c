package org.tallywall.reports.results;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.reports.csv.CsvCell;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;

/** Reads files of comma-separated values as the program writes them. */
final class CsvFileReader {
  private static final CsvMapper MAPPER =
      CsvMapper.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();

  private CsvFileReader() {}

  /**
   * Reads a file.
   *
   * @param file the file, which exists
   * @return its columns and rows
   * @throws WrongResultsException if it is not such a file
   */
  static CsvFile read(Path file) {
    String name = file.toString();
    List<List<String>> lines = lines(name, WholeText.read(file));
    if (lines.isEmpty()) {
      throw new WrongResultsException(
          "\"" + name + "\" is empty; a line of column names is expected");
    }
    return new CsvFile(name, lines.get(0), lines.subList(1, lines.size()));
  }

  private static List<List<String>> lines(String name, String text) {
    List<List<String>> lines = new ArrayList<>();
    try (MappingIterator<String[]> all = MAPPER.readerFor(String[].class).readValues(text)) {
      while (all.hasNext()) {
        lines.add(Arrays.stream(all.next()).map(CsvCell::read).toList());
      }
    } catch (JacksonException broken) {
      throw new WrongResultsException(
          "\"%s\", after line %d: this is not a file of comma-separated values; was it cut off?"
              .formatted(name, lines.size()));
    }
    return lines;
  }
}
