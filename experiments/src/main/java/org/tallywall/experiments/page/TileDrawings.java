package org.tallywall.experiments.page;

import org.tallywall.core.tile.Tile;
import org.tallywall.reports.markup.Element;

/**
 * Draws every kind of tile once, as symbols that the page uses wherever a tile lies. Each face says
 * its number and letter large. Suits differ in shape as well as in ink, so that they are told apart
 * in black and white and from the last row: bams stand on bars, craks on a jagged band, dots on
 * discs; winds on an arrow that points their way; dragons in a diamond that is full, framed or
 * dashed; a flower has petals, and a joker is dark all over.
 */
final class TileDrawings {
  private static final String INK = "#1a1a1a";
  private static final String PAPER = "#ffffff";
  private static final String[] SUIT_INKS = {"#00603a", "#a01020", "#003f8a"};
  private static final int PETALS = 8;

  private TileDrawings() {}

  /** All drawings; nothing of them is seen until it is used. */
  static Element all() {
    Element all = Element.of("svg").with("class", "drawings").with("aria-hidden", "true");
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      all.add(
          symbol(Tile.symbol(kind)).add(body(kind == Tile.JOKER ? INK : PAPER)).add(face(kind)));
    }
    return all.add(back());
  }

  /** The name of the drawing of a tile. */
  static String name(String symbol) {
    return "tile-" + symbol;
  }

  private static Element symbol(String name) {
    return Element.of("symbol").with("id", name(name)).with("viewBox", "0 0 60 80");
  }

  private static Element body(String color) {
    return rectangle(1.5, 1.5, 57, 77, color)
        .with("rx", "6")
        .with("stroke", INK)
        .with("stroke-width", "2");
  }

  private static Element face(int kind) {
    if (Tile.isSuited(kind)) {
      return suited(kind);
    } else if (kind < Tile.RED) {
      return wind(Tile.symbol(kind));
    } else if (kind < Tile.FLOWER) {
      return dragon(kind);
    }
    return kind == Tile.FLOWER ? flower() : joker();
  }

  private static Element suited(int kind) {
    int suit = Tile.suitOf(kind);
    String ink = SUIT_INKS[suit];
    Element face = Element.of("g").with("fill", ink);
    face.add(letters(String.valueOf(Tile.numberOf(kind)), 44, 52, ink));
    switch (suit) {
      case 0 -> face.add(path("M7 50h9v26h-9z M19 50h22v26h-22z M44 50h9v26h-9z"));
      case 1 ->
          face.add(
              path("M5 56l6-6 6 6 6-6 7 6 7-6 6 6 6-6 6 6v14l-6 6-6-6-6 6-7-6-7 6-6-6-6 6-6-6z"));
      default ->
          face.add(circle(30, 62.5, 13.5)).add(circle(9.5, 62.5, 5)).add(circle(50.5, 62.5, 5));
    }
    return face.add(letters(Tile.symbol(kind).substring(1), 70, 23, PAPER));
  }

  private static Element wind(String letter) {
    String arrow =
        switch (letter) {
          case "N" -> "M30 49l13 14h-7v12h-12v-12h-7z";
          case "S" -> "M30 76l13-14h-7v-12h-12v12h-7z";
          case "E" -> "M47 62.5l-14-13v7h-18v12h18v7z";
          default -> "M13 62.5l14-13v7h18v12h-18v7z";
        };
    return Element.of("g").with("fill", INK).add(letters(letter, 43, 46, INK)).add(path(arrow));
  }

  private static Element dragon(int kind) {
    Element diamond = path("M30 5l25 35-25 35-25-35z").with("stroke-width", "5");
    String ink = kind == Tile.RED ? SUIT_INKS[1] : kind == Tile.GREEN ? SUIT_INKS[0] : INK;
    diamond.with("stroke", ink).with("fill", kind == Tile.RED ? ink : PAPER);
    if (kind == Tile.SOAP) {
      diamond.with("stroke-dasharray", "6 4");
    }
    String letter = kind == Tile.RED ? PAPER : ink;
    return Element.of("g").add(diamond).add(letters(Tile.symbol(kind), 54, 38, letter));
  }

  private static Element flower() {
    Element face = Element.of("g").with("fill", "#6a1b7a");
    for (int petal = 0; petal < PETALS; petal++) {
      String turned = "rotate(" + petal * 360 / PETALS + " 30 40)";
      face.add(circle(30, 19, 8.5).with("transform", turned));
    }
    face.add(circle(30, 40, 17.5).with("fill", PAPER));
    return face.add(letters("F", 51, 32, "#6a1b7a"));
  }

  private static Element joker() {
    Element face = Element.of("g").with("fill", PAPER);
    face.add(path("M6 6h14l-14 14z M54 6v14l-14-14z M6 74v-14l14 14z M54 74h-14l14-14z"));
    return face.add(letters("J", 58, 50, PAPER));
  }

  private static Element back() {
    String lines = "M4 24l20-20 M4 44l40-40 M4 64l52-52 M10 76l46-46 M30 76l26-26 M50 76l6-6";
    Element hatch = path(lines).with("stroke", "#8a8a8a").with("stroke-width", "5");
    return symbol("back").add(body("#e4e4e4")).add(hatch);
  }

  private static Element letters(String text, int base, int size, String color) {
    return Element.of("text", text)
        .with("x", "30")
        .with("y", String.valueOf(base))
        .with("font-size", String.valueOf(size))
        .with("font-weight", "800")
        .with("text-anchor", "middle")
        .with("fill", color);
  }

  private static Element path(String way) {
    return Element.of("path").with("d", way);
  }

  private static Element circle(double x, double y, double radius) {
    return Element.of("circle")
        .with("cx", String.valueOf(x))
        .with("cy", String.valueOf(y))
        .with("r", String.valueOf(radius));
  }

  private static Element rectangle(double x, double y, int width, int height, String color) {
    return Element.of("rect")
        .with("x", String.valueOf(x))
        .with("y", String.valueOf(y))
        .with("width", String.valueOf(width))
        .with("height", String.valueOf(height))
        .with("fill", color);
  }
}
