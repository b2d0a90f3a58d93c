package org.tallywall.experiments.attack;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;

/**
 * JSON whose values are kept as they were typed: fields may come twice, and anything may stand in
 * the place of a value.
 */
final class JsonTree {
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
          .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
          .build();

  /** What a tree is. */
  enum Kind {
    VALUE,
    ITEMS,
    FIELDS
  }

  Kind kind;
  String text;
  final List<String> names = new ArrayList<>();
  final List<JsonTree> parts = new ArrayList<>();

  private JsonTree(Kind kind, String text) {
    this.kind = kind;
    this.text = text;
  }

  static JsonTree value(String text) {
    return new JsonTree(Kind.VALUE, text);
  }

  static JsonTree of(Kind kind) {
    return new JsonTree(kind, "");
  }

  /** Reads a valid text. */
  static JsonTree read(String text) {
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
      return read(parser, parser.nextToken());
    }
  }

  private static JsonTree read(JsonParser parser, JsonToken token) {
    if (token == JsonToken.START_OBJECT) {
      JsonTree fields = of(Kind.FIELDS);
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        fields.names.add(parser.currentName());
        fields.parts.add(read(parser, parser.nextToken()));
      }
      return fields;
    } else if (token == JsonToken.START_ARRAY) {
      JsonTree items = of(Kind.ITEMS);
      for (JsonToken next = parser.nextToken();
          next != JsonToken.END_ARRAY;
          next = parser.nextToken()) {
        items.parts.add(read(parser, next));
      }
      return items;
    }
    return value(token == JsonToken.VALUE_STRING ? quoted(parser.getString()) : parser.getString());
  }

  /** A text as JSON writes it, with what may stand there plainly left plain. */
  static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    for (int at = 0; at < text.length(); at++) {
      char letter = text.charAt(at);
      if (letter == '"' || letter == '\\') {
        quoted.append('\\').append(letter);
      } else if (letter < ' ' || Character.isSurrogate(letter)) {
        quoted.append("\\u").append("%04x".formatted((int) letter));
      } else {
        quoted.append(letter);
      }
    }
    return quoted.append('"').toString();
  }

  void add(String name, JsonTree part) {
    names.add(name);
    parts.add(part);
  }

  void remove(int at) {
    parts.remove(at);
    if (kind == Kind.FIELDS) {
      names.remove(at);
    }
  }

  /** The part with a name, or null. */
  JsonTree get(String name) {
    int at = names.indexOf(name);
    return at < 0 ? null : parts.get(at);
  }

  JsonTree copy() {
    JsonTree copy = new JsonTree(kind, text);
    copy.names.addAll(names);
    parts.forEach(part -> copy.parts.add(part.copy()));
    return copy;
  }

  /** Becomes another tree. */
  void become(JsonTree other) {
    JsonTree copy = other.copy();
    kind = copy.kind;
    text = copy.text;
    names.clear();
    names.addAll(copy.names);
    parts.clear();
    parts.addAll(copy.parts);
  }

  /** This tree and all below it. */
  List<JsonTree> all() {
    List<JsonTree> all = new ArrayList<>();
    collect(all);
    return all;
  }

  private void collect(List<JsonTree> all) {
    all.add(this);
    parts.forEach(part -> part.collect(all));
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    write(text);
    return text.toString();
  }

  private void write(StringBuilder out) {
    if (kind == Kind.VALUE) {
      out.append(text);
      return;
    }
    boolean fields = kind == Kind.FIELDS;
    out.append(fields ? '{' : '[');
    for (int at = 0; at < parts.size(); at++) {
      out.append(at == 0 ? "" : at % 4 == 0 ? ",\n" : ",");
      if (fields) {
        out.append(quoted(names.get(at))).append(':');
      }
      parts.get(at).write(out);
    }
    out.append(fields ? '}' : ']');
  }
}
