package org.tallywall.experiments.attack;

import java.util.List;
import java.util.stream.Collectors;

/** A card of JSON as a table, as somebody would type it into a spreadsheet. */
final class CardTable {
  private static final List<String> COLUMNS =
      List.of(
          "id",
          "tiles",
          "slide",
          "where",
          "suits",
          "value",
          "concealed",
          "jokers",
          "jokerless",
          "say");

  private CardTable() {}

  static String of(JsonTree card) {
    StringBuilder table = new StringBuilder("family," + String.join(",", COLUMNS) + "\n");
    for (JsonTree family : card.get("families").parts) {
      for (JsonTree line : family.get("lines").parts) {
        table.append(cell(family.get("family")));
        COLUMNS.forEach(column -> table.append(',').append(cell(line.get(column))));
        table.append('\n');
      }
    }
    return table.toString();
  }

  private static String cell(JsonTree value) {
    if (value == null) {
      return "";
    } else if (value.kind == JsonTree.Kind.ITEMS) {
      return value.parts.stream().map(CardTable::cell).collect(Collectors.joining("|"));
    }
    String text = value.text.replaceAll("^\"|\"$", "");
    return text.contains(",") ? "\"" + text + "\"" : text;
  }
}
