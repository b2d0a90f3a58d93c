package org.tallywall.core.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;

/**
 * Reads JSON as people type it, with {@code //} and {@code /* *}{@code /} comments and trailing
 * commas, and keeps the place of every value, so that faults found later can be shown where they
 * are.
 */
public final class LocatedJson {
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
          .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(FileLimits.DEEPEST)
                  .maxNumberLength(FileLimits.LONGEST_NUMBER)
                  .maxNameLength(FileLimits.LARGEST_FILE)
                  .maxStringLength(FileLimits.LARGEST_FILE)
                  .build())
          .build();

  private final JsonParser parser;
  private final String text;
  private final Faults faults;
  private int values;

  /** Right behind the last value that was read. */
  private Place end = Place.FILE;

  private LocatedJson(JsonParser parser, String text, Faults faults) {
    this.parser = parser;
    this.text = text;
    this.faults = faults;
  }

  /**
   * Reads one JSON value. What it may hold is bounded by {@link FileLimits}; a text with half a
   * character in it, which no file of results could hold, is a fault.
   *
   * @param text the whole file
   * @param faults takes the fault where the text is not JSON, or goes beyond a bound
   * @return the value, or null where the text cannot be used
   */
  public static Node read(String text, Faults faults) {
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
      return new LocatedJson(parser, text, faults).whole();
    }
  }

  private Node whole() {
    try {
      JsonToken first = parser.nextToken();
      if (first == null) {
        faults.fault(new Place(1, 1), "the file is empty; an object in braces is expected");
        return null;
      }
      Node node = value(first);
      if (parser.nextToken() != null) {
        faults.fault(place(), "something follows the end of the object; take it out");
        return null;
      }
      return node;
    } catch (TooManyException many) {
      faults.fault(
          place(),
          "the file holds more values than this program reads ("
              + FileLimits.MOST_VALUES
              + "); is it the right one?");
      return null;
    } catch (JacksonException broken) {
      TokenStreamLocation at = broken.getLocation();
      at = at == null ? parser.currentLocation() : at;
      String message = broken.getOriginalMessage();
      faults.fault(
          JsonTrouble.commaMissing(message) ? end : new Place(at.getLineNr(), at.getColumnNr()),
          "this is not JSON: " + JsonTrouble.inWords(message, line(at.getLineNr())));
      return null;
    }
  }

  /** A line of the text by its number. */
  private String line(int number) {
    String[] lines = text.split("\r\n|\r|\n", number + 1);
    return number < 1 || number > lines.length ? "" : lines[number - 1];
  }

  private Place place() {
    TokenStreamLocation at = parser.currentTokenLocation();
    return new Place(at.getLineNr(), at.getColumnNr());
  }

  private Node value(JsonToken token) {
    if (++values > FileLimits.MOST_VALUES) {
      throw new TooManyException();
    }
    Node node = node(token, place());
    TokenStreamLocation behind = parser.currentLocation();
    end = new Place(behind.getLineNr(), behind.getColumnNr());
    return node;
  }

  private Node node(JsonToken token, Place place) {
    return switch (token) {
      case START_OBJECT -> new Node(place, fields());
      case START_ARRAY -> new Node(place, items());
      case VALUE_STRING -> new Node(place, text(parser.getString(), place));
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Node(place, number(place));
      case VALUE_TRUE -> new Node(place, Boolean.TRUE);
      case VALUE_FALSE -> new Node(place, Boolean.FALSE);
      default -> new Node(place, null);
    };
  }

  private String text(String text, Place place) {
    if (Shown.broken(text)) {
      faults.fault(
          place,
          "\"" + Shown.word(text) + "\" holds half a character; take it out or write it whole");
    }
    return text;
  }

  /** Within the bounds a number can be turned into any other kind without harm. */
  private BigDecimal number(Place place) {
    String typed = parser.getString();
    int most = FileLimits.LARGEST_EXPONENT;
    long exponent;
    try {
      BigDecimal number = new BigDecimal(typed);
      exponent = number.signum() == 0 ? number.scale() : number.precision() - 1L - number.scale();
      if (Math.abs(exponent) <= most) {
        return number;
      }
    } catch (NumberFormatException beyondAll) {
      exponent = typed.lastIndexOf('-') > 0 ? -1 : 1;
    }
    faults.unreadable(
        place,
        exponent < 0
            ? "the number is too close to 0 to be read; write 0, or one from 1e-" + most + " on"
            : "the number is too large to be read; numbers go up to 1e" + most);
    return BigDecimal.ZERO;
  }

  private Node.Fields fields() {
    LinkedHashMap<String, Node> values = new LinkedHashMap<>();
    Map<String, Place> places = new HashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      Place place = place();
      String name = text(parser.currentName(), place);
      Node value = value(parser.nextToken());
      if (values.putIfAbsent(name, value) == null) {
        places.put(name, place);
      } else {
        faults.fault(place, "the field \"" + Shown.word(name) + "\" is there twice; take one out");
      }
    }
    return new Node.Fields(values, places);
  }

  private Node.Items items() {
    List<Node> values = new ArrayList<>();
    for (JsonToken next = parser.nextToken();
        next != JsonToken.END_ARRAY;
        next = parser.nextToken()) {
      values.add(value(next));
    }
    return new Node.Items(values);
  }

  /** Ends the reading of a file that holds too much. */
  private static final class TooManyException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    TooManyException() {
      super(null, null, false, false);
    }
  }
}
