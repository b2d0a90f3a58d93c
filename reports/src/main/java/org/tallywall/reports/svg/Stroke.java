package org.tallywall.reports.svg;

import org.tallywall.reports.markup.Element;

/**
 * How a line is drawn.
 *
 * @param colour its colour
 * @param width its width
 * @param dashes lengths of dashes and gaps; empty for an unbroken line
 */
record Stroke(Colour colour, double width, String dashes) {
  static final Stroke GRID = of(Colour.GRID, 2);
  static final Stroke AXIS = of(Colour.LINE, 2);
  static final Stroke RANGE = of(Colour.BLUE, 5);
  static final Stroke ZERO = new Stroke(Colour.INK, 3, "10 6");

  static Stroke of(Colour colour, double width) {
    return new Stroke(colour, width, "");
  }

  Element on(Element element) {
    element.with("stroke", colour.code()).with("stroke-width", Units.of(width));
    return dashes.isEmpty() ? element : element.with("stroke-dasharray", dashes);
  }
}
