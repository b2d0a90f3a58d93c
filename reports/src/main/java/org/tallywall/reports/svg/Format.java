package org.tallywall.reports.svg;

/** Where a picture is to be seen, and so how wide it is and what it says of itself. */
enum Format {
  /** A file of its own, as for a slide: it says what was asked and where it comes from. */
  ALONE(SvgWriter.WIDTH, 0),
  /** In a page that says so already. */
  PAGE(SvgWriter.WIDTH, 0),
  /** In a page on a phone: letters of the same size on less than half the width. */
  NARROW(720, 28);

  private final int width;
  private final double cut;

  Format(int width, double cut) {
    this.width = width;
    this.cut = cut;
  }

  int width() {
    return width;
  }

  /** How much of each margin is left off, where the page has one of its own. */
  double cut() {
    return cut;
  }

  boolean isAlone() {
    return this == ALONE;
  }
}
