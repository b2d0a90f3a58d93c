package org.tallywall.core.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadFeature;
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
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .build();

  private LocatedJson() {}

  /**
   * Reads one JSON value.
   *
   * @param text the whole file
   * @param faults takes the fault where the text is not JSON
   * @return the value, or null where the text is not JSON
   */
  public static Node read(String text, Faults faults) {
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
      JsonToken first = parser.nextToken();
      if (first == null) {
        faults.fault(new Place(1, 1), "the file is empty; an object in braces is expected");
        return null;
      }
      Node node = value(parser, first);
      if (parser.nextToken() != null) {
        faults.fault(place(parser), "something follows after the end of the object; take it out");
        return null;
      }
      return node;
    } catch (JacksonException broken) {
      TokenStreamLocation at = broken.getLocation();
      Place place = at == null ? Place.FILE : new Place(at.getLineNr(), at.getColumnNr());
      faults.fault(place, "this is not JSON: " + reason(broken));
      return null;
    }
  }

  private static String reason(JacksonException broken) {
    String message = broken.getOriginalMessage();
    int lineEnd = message.indexOf('\n');
    message = lineEnd < 0 ? message : message.substring(0, lineEnd);
    if (message.startsWith("Duplicate Object property")) {
      return "the field "
          + message.substring("Duplicate Object property ".length())
          + " stands twice; take one out";
    }
    return message;
  }

  private static Place place(JsonParser parser) {
    TokenStreamLocation at = parser.currentTokenLocation();
    return new Place(at.getLineNr(), at.getColumnNr());
  }

  private static Node value(JsonParser parser, JsonToken token) {
    Place place = place(parser);
    return switch (token) {
      case START_OBJECT -> new Node(place, fields(parser));
      case START_ARRAY -> new Node(place, items(parser));
      case VALUE_STRING -> new Node(place, parser.getString());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Node(place, parser.getDecimalValue());
      case VALUE_TRUE -> new Node(place, Boolean.TRUE);
      case VALUE_FALSE -> new Node(place, Boolean.FALSE);
      default -> new Node(place, null);
    };
  }

  private static Node.Fields fields(JsonParser parser) {
    LinkedHashMap<String, Node> values = new LinkedHashMap<>();
    Map<String, Place> places = new HashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      places.put(name, place(parser));
      values.put(name, value(parser, parser.nextToken()));
    }
    return new Node.Fields(values, places);
  }

  private static Node.Items items(JsonParser parser) {
    List<Node> values = new ArrayList<>();
    for (JsonToken next = parser.nextToken();
        next != JsonToken.END_ARRAY;
        next = parser.nextToken()) {
      values.add(value(parser, next));
    }
    return new Node.Items(values);
  }
}
