package org.tallywall.experiments.page;

import java.util.List;
import org.tallywall.reports.markup.Element;

/** Says what stands on the tiles, and what the signs around them mean. */
final class Legend {
  private static final List<List<String>> TILES =
      List.of(
          List.of("1b 9b", "b, on bars: bams, 1 to 9"),
          List.of("1c 9c", "c, on a jagged band: craks"),
          List.of("1d 9d", "d, on discs: dots"),
          List.of("N E W S", "north, east, west, south"),
          List.of("R", "red dragon"),
          List.of("G", "green dragon"),
          List.of("0", "soap, which is also zero"),
          List.of("F", "flower"),
          List.of("J", "joker"),
          List.of("back", "closed to you"));

  private Legend() {}

  static Element of() {
    Element list = Element.of("ul").with("class", "legend");
    for (List<String> entry : TILES) {
      Element item = Element.of("li");
      for (String symbol : entry.get(0).split(" ")) {
        item.add(tile(symbol));
      }
      list.add(item.add(Element.of("span", " " + entry.get(1))));
    }
    return list;
  }

  private static Element tile(String symbol) {
    Element use = Element.of("use").with("href", "#" + TileDrawings.name(symbol));
    return Element.of("svg")
        .with("class", "tile")
        .with("viewBox", "0 0 60 80")
        .with("aria-hidden", "true")
        .add(use);
  }
}
