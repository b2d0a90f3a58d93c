package org.tallywall.reports.svg;

/**
 * A rectangle.
 *
 * @param x its left side
 * @param y its top
 * @param width its width
 * @param height its height
 */
record Box(double x, double y, double width, double height) {
  double right() {
    return x + width;
  }

  double bottom() {
    return y + height;
  }

  double center() {
    return x + width / 2;
  }

  double middle() {
    return y + height / 2;
  }
}
