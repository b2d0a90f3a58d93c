package org.tallywall.reports.results;

import java.nio.file.Path;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Reads the small JSON files of a results folder, which the program wrote itself. */
final class SmallJson {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
          .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .enable(DeserializationFeature.USE_BIG_INTEGER_FOR_INTS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private SmallJson() {}

  /**
   * Reads a file.
   *
   * @param file the file, which exists
   * @return its fields
   * @throws WrongResultsException if it cannot be read or is no JSON object
   */
  static Facts read(Path file) {
    try {
      Object root = MAPPER.readValue(WholeText.read(file), Object.class);
      if (root instanceof Map<?, ?> fields) {
        return Facts.of(fields);
      }
    } catch (JacksonException broken) {
      TokenStreamLocation at = broken.getLocation();
      String place = at == null ? "" : ":%s:%s".formatted(at.getLineNr(), at.getColumnNr());
      throw new WrongResultsException(
          file + place + ": this is not JSON; was the file cut off or changed?");
    } catch (NumberFormatException tooLarge) {
      throw new WrongResultsException(
          "\"" + file + "\" is damaged: it holds a number too large to be read");
    }
    throw new WrongResultsException("\"" + file + "\" is damaged: an object in braces is expected");
  }
}
