package org.tallywall.reports.svg;

/**
 * An entry of a legend.
 *
 * @param words what the mark means
 * @param mark the mark
 */
record Key(String words, Mark mark) {
  /** Room for the mark. */
  static final double WIDTH = 60;

  /** Where the middle of the mark stands in it. */
  static final double MARK_AT = 24;

  /** Room between two entries. */
  static final double GAP = 36;

  /** The hollow square of what the others are compared with. */
  static Key baseline() {
    return new Key("what the others are compared with", (s, x, y) -> s.square(x, y, Color.BLUE));
  }

  /** The broken line at 0. */
  static Key zero(String words) {
    return new Key(words, (s, x, y) -> s.line(x - MARK_AT, y, x + MARK_AT, y, Stroke.ZERO));
  }

  /** Draws a mark around a point. */
  interface Mark {
    void draw(Sketch sketch, double x, double y);
  }
}
