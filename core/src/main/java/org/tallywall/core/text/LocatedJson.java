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
      return read(parser, faults);
    }
  }

  private static Node read(JsonParser parser, Faults faults) {
    try {
      JsonToken first = parser.nextToken();
      if (first == null) {
        faults.fault(new Place(1, 1), "the file is empty; an object in braces is expected");
        return null;
      }
      Node node = value(parser, first, faults);
      if (parser.nextToken() != null) {
        faults.fault(place(parser), "something follows after the end of the object; take it out");
        return null;
      }
      return node;
    } catch (JacksonException broken) {
      TokenStreamLocation at = broken.getLocation();
      at = at == null ? parser.currentLocation() : at;
      faults.fault(
          new Place(at.getLineNr(), at.getColumnNr()),
          "this is not JSON: " + JsonTrouble.inWords(broken.getOriginalMessage()));
      return null;
    }
  }

  private static Place place(JsonParser parser) {
    TokenStreamLocation at = parser.currentTokenLocation();
    return new Place(at.getLineNr(), at.getColumnNr());
  }

  private static Node value(JsonParser parser, JsonToken token, Faults faults) {
    Place place = place(parser);
    return switch (token) {
      case START_OBJECT -> new Node(place, fields(parser, faults));
      case START_ARRAY -> new Node(place, items(parser, faults));
      case VALUE_STRING -> new Node(place, parser.getString());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Node(place, parser.getDecimalValue());
      case VALUE_TRUE -> new Node(place, Boolean.TRUE);
      case VALUE_FALSE -> new Node(place, Boolean.FALSE);
      default -> new Node(place, null);
    };
  }

  private static Node.Fields fields(JsonParser parser, Faults faults) {
    LinkedHashMap<String, Node> values = new LinkedHashMap<>();
    Map<String, Place> places = new HashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      Place place = place(parser);
      Node value = value(parser, parser.nextToken(), faults);
      if (values.putIfAbsent(name, value) == null) {
        places.put(name, place);
      } else {
        faults.fault(place, "the field \"" + name + "\" stands twice; take one out");
      }
    }
    return new Node.Fields(values, places);
  }

  private static Node.Items items(JsonParser parser, Faults faults) {
    List<Node> values = new ArrayList<>();
    for (JsonToken next = parser.nextToken();
        next != JsonToken.END_ARRAY;
        next = parser.nextToken()) {
      values.add(value(parser, next, faults));
    }
    return new Node.Items(values);
  }
}
