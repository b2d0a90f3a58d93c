package org.tallywall.reports.svg;

import java.util.Locale;
import org.tallywall.reports.markup.Element;

/**
 * Fillings that differ in pattern as well as in shade, from dark to light and back, so that
 * neighbours differ in grey print too.
 */
enum Pattern {
  /** Dark, without a pattern. */
  SOLID(Colour.BLUE, Colour.BLUE, ""),
  /** Slanting lines. */
  SLANTS(Colour.SKY, Colour.INK, "M-4,4 L4,-4 M0,16 L16,0 M12,20 L20,12"),
  /** Light, without a pattern. */
  PALE(Colour.YELLOW, Colour.YELLOW, ""),
  /** Slanting lines both ways. */
  CROSSED(Colour.ORANGE, Colour.INK, "M0,0 L16,16 M0,16 L16,0"),
  /** White with upright lines. */
  UPRIGHTS(Colour.WHITE, Colour.LINE, "M8,0 L8,16"),
  /** Lines from side to side. */
  LEVELS(Colour.GREEN, Colour.INK, "M0,8 L16,8"),
  /** Slanting lines on white, for what is less. */
  LESS(Colour.WHITE, Colour.VERMILION, "M-4,4 L4,-4 M0,16 L16,0 M12,20 L20,12");

  private static final int TILE = 16;

  private final Colour ground;
  private final Colour lines;
  private final String path;

  Pattern(Colour ground, Colour lines, String path) {
    this.ground = ground;
    this.lines = lines;
    this.path = path;
  }

  /** The value of {@code fill}. */
  String fill(String ids) {
    return path.isEmpty() ? ground.code() : "url(#" + id(ids) + ")";
  }

  boolean isDrawn() {
    return !path.isEmpty();
  }

  /** The element that defines it; for drawn ones only. */
  Element definition(String ids) {
    Element tile = Element.of("pattern").with("id", id(ids)).with("patternUnits", "userSpaceOnUse");
    tile.with("width", Units.of(TILE)).with("height", Units.of(TILE));
    Element rect = Element.of("rect").with("width", Units.of(TILE)).with("height", Units.of(TILE));
    Element drawn = Element.of("path").with("d", path).with("fill", "none");
    drawn.with("stroke", lines.code()).with("stroke-width", "2");
    return tile.add(rect.with("fill", ground.code())).add(drawn);
  }

  private String id(String ids) {
    return ids + "-" + name().toLowerCase(Locale.ROOT);
  }
}
