package org.tallywall.reports.svg;

import org.tallywall.reports.markup.Element;

/**
 * How a line is drawn.
 *
 * @param color its color
 * @param width its width
 * @param dashes lengths of dashes and gaps; empty for an unbroken line
 */
record Stroke(Color color, double width, String dashes) {
  static final Stroke GRID = of(Color.GRID, 2);
  static final Stroke AXIS = of(Color.LINE, 2);
  static final Stroke RANGE = of(Color.BLUE, 5);
  static final Stroke ZERO = new Stroke(Color.INK, 3, "10 6");

  static Stroke of(Color color, double width) {
    return new Stroke(color, width, "");
  }

  Element on(Element element) {
    element.with("stroke", color.code()).with("stroke-width", Units.of(width));
    return dashes.isEmpty() ? element : element.with("stroke-dasharray", dashes);
  }
}
