package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Slide;
import org.tallywall.core.card.SuitChoice;
import tools.jackson.databind.json.JsonMapper;

/** Writes an invented card as a card file that people can read and change. */
final class CardText {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private CardText() {}

  /** A line of a card file. */
  static String line(LineSketch sketch, String id, int value, boolean concealed) {
    List<String> fields = new ArrayList<>();
    if (!id.isEmpty()) {
      fields.add("\"id\": " + quoted(id));
    }
    List<String> hands = sketch.hands().stream().map(CardText::quoted).toList();
    fields.add(
        "\"tiles\": " + (hands.size() == 1 ? hands.get(0) : "[" + String.join(", ", hands) + "]"));
    if (sketch.slide() != Slide.NONE) {
      fields.add("\"slide\": " + quoted(sketch.slide().text()));
    }
    if (!sketch.where().isEmpty()) {
      fields.add("\"where\": " + quoted(sketch.where()));
    }
    if (sketch.suits() != SuitChoice.AS_WRITTEN) {
      fields.add("\"suits\": " + quoted(sketch.suits().text()));
    }
    fields.add("\"value\": " + value);
    if (concealed) {
      fields.add("\"concealed\": true");
    }
    fields.add("\"say\": " + quoted(sketch.say()));
    return "{ " + String.join(", ", fields) + " }";
  }

  /** A card with one family, for looking at single lines. */
  static String small(String family, String line) {
    return "{ \"card\": \"drawn\", \"families\": [ { \"family\": "
        + quoted(family)
        + ", \"lines\": [ "
        + line
        + " ] } ] }";
  }

  /** A whole card file. */
  static String whole(String name, String edition, List<String> remarks, List<String> families) {
    StringBuilder text = new StringBuilder();
    remarks.forEach(remark -> text.append("// ").append(remark).append('\n'));
    text.append("{\n  \"card\": ").append(quoted(name));
    text.append(",\n  \"edition\": ").append(quoted(edition));
    text.append(",\n  \"families\": [\n");
    text.append(String.join(",\n", families));
    return text.append("\n  ]\n}\n").toString();
  }

  /** A family of a card file. */
  static String family(String name, List<String> lines) {
    return "    { \"family\": "
        + quoted(name)
        + ",\n      \"lines\": [\n        "
        + String.join(",\n        ", lines)
        + "\n      ] }";
  }

  private static String quoted(String text) {
    return MAPPER.writeValueAsString(text);
  }
}
