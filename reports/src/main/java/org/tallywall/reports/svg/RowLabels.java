package org.tallywall.reports.svg;

import java.util.ArrayList;
import java.util.List;

/**
 * Names of rows at the left, wrapped where they are long, and so the height of every row.
 *
 * @param lines the lines of each name
 * @param width the width of the column
 * @param least the least height of a row
 */
record RowLabels(List<List<String>> lines, double width, double least) {
  /** Room between the column and what stands at its right. */
  static final double GAP = 28;

  private static final double LEAST_HEIGHT = 54;
  private static final double AROUND = 20;

  /**
   * Wraps names.
   *
   * @param labels the names
   * @param most the most room for them
   */
  static RowLabels of(List<String> labels, double most) {
    List<List<String>> lines = new ArrayList<>();
    double width = 0;
    for (String label : labels) {
      List<String> wrapped = Lines.wrap(label, most, Face.PLAIN);
      width = Math.max(width, Sheet.widest(wrapped, Face.PLAIN));
      lines.add(wrapped);
    }
    return new RowLabels(List.copyOf(lines), width, LEAST_HEIGHT);
  }

  /** The same names in rows that have room for two lines of numbers. */
  RowLabels inTallRows() {
    return new RowLabels(lines, width, LEAST_HEIGHT + Face.SMALL.lineHeight());
  }

  /** Where the next column begins. */
  double right() {
    return Sheet.MARGIN + width + GAP;
  }

  double height(int row) {
    return Math.max(least, lines.get(row).size() * Face.PLAIN.lineHeight() + AROUND);
  }

  /** The rows below one another, over the whole width of the sheet. */
  List<Box> boxes(Sheet sheet) {
    List<Box> boxes = new ArrayList<>();
    double y = sheet.used();
    for (int row = 0; row < lines.size(); row++) {
      boxes.add(new Box(Sheet.MARGIN, y, sheet.width(), height(row)));
      y += height(row);
    }
    return boxes;
  }

  /** Shades every second row and writes the names. */
  void draw(Sketch sketch, List<Box> boxes) {
    for (int row = 0; row < boxes.size(); row++) {
      Box box = boxes.get(row);
      if (row % 2 == 0) {
        Box wide = new Box(box.x() - 12, box.y(), box.width() + 24, box.height());
        sketch.box(wide, Color.SHADE.code());
      }
      sketch.block(box.x(), box.middle(), Anchor.START, Face.PLAIN, lines.get(row));
    }
  }
}
