package org.tallywall.reports.svg;

/** The few kinds of text in a picture. None is smaller than 24 (see the package). */
enum Face {
  /** The title. */
  TITLE(36, true, Colour.INK),
  /** What counts: names of axes, numbers in squares. */
  STRONG(26, true, Colour.INK),
  /** Names of rows, numbers. */
  PLAIN(26, false, Colour.INK),
  /** Tick labels, legends, notes. */
  SMALL(24, false, Colour.INK),
  /** What steps back. */
  FAINT(24, false, Colour.SOFT);

  private final int size;
  private final boolean bold;
  private final Colour colour;

  Face(int size, boolean bold, Colour colour) {
    this.size = size;
    this.bold = bold;
    this.colour = colour;
  }

  int size() {
    return size;
  }

  boolean bold() {
    return bold;
  }

  Colour colour() {
    return colour;
  }

  /** From the base of a line to the base of the next. */
  double lineHeight() {
    return size * 1.25;
  }
}
