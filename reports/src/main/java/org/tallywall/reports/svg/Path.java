package org.tallywall.reports.svg;

/** A line from point to point, as the attribute {@code d} wants it. */
final class Path {
  private final StringBuilder d = new StringBuilder();

  private Path() {}

  static Path at(double x, double y) {
    return new Path().point("M", x, y);
  }

  Path to(double x, double y) {
    return point(" L", x, y);
  }

  String open() {
    return d.toString();
  }

  String closed() {
    return d + " Z";
  }

  private Path point(String how, double x, double y) {
    d.append(how).append(Units.of(x)).append(',').append(Units.of(y));
    return this;
  }
}
