package org.tallywall.reports.svg;

import java.util.ArrayList;
import java.util.List;

/** Headings of columns: wrapped, bold, and standing low where others need more lines. */
final class Headings {
  private static final double BELOW = 14;

  private final List<Heading> headings = new ArrayList<>();

  private record Heading(double x, Anchor anchor, List<String> lines) {}

  void add(double x, Anchor anchor, String words, double width) {
    headings.add(new Heading(x, anchor, Lines.wrap(words, width, Face.STRONG)));
  }

  /** Writes them and uses up the sheet below them. */
  void draw(Sheet sheet) {
    int most = headings.stream().mapToInt(heading -> heading.lines().size()).max().orElse(0);
    double bottom = sheet.used() + most * Face.STRONG.lineHeight();
    for (Heading heading : headings) {
      double base = bottom - (heading.lines().size() - 0.75) * Face.STRONG.lineHeight();
      for (String line : heading.lines()) {
        sheet.sketch().text(heading.x(), base, heading.anchor(), Face.STRONG, line);
        base += Face.STRONG.lineHeight();
      }
    }
    sheet.use(bottom - sheet.used() + BELOW);
  }
}
