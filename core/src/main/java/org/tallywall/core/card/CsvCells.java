package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FileLimits;
import org.tallywall.core.text.Place;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import tools.jackson.dataformat.csv.CsvSchema;

/** Splits CSV (RFC 4180) into cells with their places; comma, semicolon or tab as separator. */
final class CsvCells {
  private static final CsvMapper MAPPER =
      CsvMapper.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();

  private CsvCells() {}

  /**
   * Splits a text into rows of cells.
   *
   * @param text the whole file
   * @param faults takes the fault where the text is no CSV
   * @return the rows so far as they could be read
   */
  static List<List<Typed>> read(String text, Faults faults) {
    List<List<Typed>> rows = new ArrayList<>();
    String[] lines = text.split("\r\n|\r|\n", -1);
    CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(separator(text));
    try (JsonParser parser = MAPPER.reader().with(schema).createParser(text)) {
      List<Typed> row = new ArrayList<>();
      int cells = 0;
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (++cells > FileLimits.MOST_VALUES) {
          faults.fault(
              place(parser, lines),
              "the file holds more cells than this program reads ("
                  + FileLimits.MOST_VALUES
                  + "); is it the right one?");
          return new ArrayList<>();
        } else if (token == JsonToken.VALUE_STRING) {
          row.add(new Typed(parser.getString(), place(parser, lines)));
        } else if (token == JsonToken.END_ARRAY && !row.isEmpty()) {
          rows.add(row);
          row = new ArrayList<>();
        }
      }
    } catch (JacksonException broken) {
      trouble(broken, lines, faults);
    }
    return rows;
  }

  private static Place place(JsonParser parser, String[] lines) {
    TokenStreamLocation cell = parser.currentTokenLocation();
    String line = cell.getLineNr() > lines.length ? "" : lines[cell.getLineNr() - 1];
    boolean quoted = line.startsWith("\"", cell.getColumnNr() - 1);
    return new Place(cell.getLineNr(), cell.getColumnNr()).plus(quoted ? 1 : 0);
  }

  private static void trouble(JacksonException broken, String[] lines, Faults faults) {
    String message = broken.getOriginalMessage();
    TokenStreamLocation at = broken.getLocation();
    Place place = at == null ? Place.FILE : new Place(at.getLineNr(), at.getColumnNr());
    String words = "the text is garbled here; save the sheet as CSV in UTF-8";
    if (message.contains("closing quote")) {
      place = lastOpened(lines);
      words = "a quoted cell is not closed; write \" at its end";
    } else if (message.contains("column separator")) {
      words = "something follows a cell's closing quote; double the quotes inside a cell";
    }
    faults.fault(place, "this is not CSV: " + words);
  }

  private static Place lastOpened(String[] lines) {
    Place opened = Place.FILE;
    boolean inside = false;
    for (int line = 0; line < lines.length; line++) {
      for (int at = lines[line].indexOf('"'); at >= 0; at = lines[line].indexOf('"', at + 1)) {
        inside = !inside;
        opened = inside ? new Place(line + 1, at + 1) : opened;
      }
    }
    return opened;
  }

  private static char separator(String text) {
    int end = text.indexOf('\n');
    String header = end < 0 ? text : text.substring(0, end);
    char best = ',';
    for (char candidate : new char[] {',', ';', '\t'}) {
      if (count(header, candidate) > count(header, best)) {
        best = candidate;
      }
    }
    return best;
  }

  private static long count(String header, char letter) {
    return header.chars().filter(other -> other == letter).count();
  }
}
