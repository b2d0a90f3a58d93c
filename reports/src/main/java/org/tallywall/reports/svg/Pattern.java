package org.tallywall.reports.svg;

import java.util.Locale;
import org.tallywall.reports.markup.Element;

/**
 * Fillings that differ in pattern as well as in shade, from dark to light and back, so that
 * neighbors differ in gray print too.
 */
enum Pattern {
  /** Dark, without a pattern. */
  SOLID(Color.BLUE, Color.BLUE, ""),
  /** Slanting lines. */
  SLANTS(Color.SKY, Color.INK, "M-4,4 L4,-4 M0,16 L16,0 M12,20 L20,12"),
  /** Light, without a pattern. */
  PALE(Color.YELLOW, Color.YELLOW, ""),
  /** Slanting lines both ways. */
  CROSSED(Color.ORANGE, Color.INK, "M0,0 L16,16 M0,16 L16,0"),
  /** White with upright lines. */
  UPRIGHTS(Color.WHITE, Color.LINE, "M8,0 L8,16"),
  /** Lines from side to side. */
  LEVELS(Color.GREEN, Color.INK, "M0,8 L16,8"),
  /** Slanting lines on white, for what is less. */
  LESS(Color.WHITE, Color.VERMILION, "M-4,4 L4,-4 M0,16 L16,0 M12,20 L20,12");

  private static final int TILE = 16;

  private final Color ground;
  private final Color lines;
  private final String path;

  Pattern(Color ground, Color lines, String path) {
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
