package org.tallywall.reports.svg;

/** The few kinds of text in a picture. None is smaller than 24 (see the package). */
enum Face {
  /** What must not be missed. */
  MARK(32, true, Color.WARN),
  /** The title. */
  TITLE(36, true, Color.INK),
  /** What counts: names of axes, numbers in squares. */
  STRONG(26, true, Color.INK),
  /** Names of rows, numbers. */
  PLAIN(26, false, Color.INK),
  /** Tick labels, legends, notes. */
  SMALL(24, false, Color.INK),
  /** What steps back. */
  FAINT(24, false, Color.SOFT);

  private final int size;
  private final boolean bold;
  private final Color color;

  Face(int size, boolean bold, Color color) {
    this.size = size;
    this.bold = bold;
    this.color = color;
  }

  int size() {
    return size;
  }

  boolean bold() {
    return bold;
  }

  Color color() {
    return color;
  }

  /** From the base of a line to the base of the next. */
  double lineHeight() {
    return size * 1.25;
  }
}
