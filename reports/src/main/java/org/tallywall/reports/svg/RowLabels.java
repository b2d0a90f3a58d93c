package org.tallywall.reports.svg;

import java.util.ArrayList;
import java.util.List;

/**
 * Names of rows, wrapped where they are long, and so the height of every row. They stand at the
 * left, on a narrow sheet above what belongs to them.
 *
 * @param lines the lines of each name
 * @param width the width of the column; 0 where they stand above
 * @param least the least height of a row without names above it
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
   * @param most the most room for them at the left
   * @param sheet where they are to stand
   */
  static RowLabels of(List<String> labels, double most, Sheet sheet) {
    if (sheet.isNarrow()) {
      return new RowLabels(
          labels.stream().map(label -> Lines.wrap(label, sheet.width(), Face.PLAIN)).toList(),
          0,
          LEAST_HEIGHT);
    }
    return beside(labels, most);
  }

  /** Wraps names that stand at the left on any sheet. */
  static RowLabels beside(List<String> labels, double most) {
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

  /** The same names in rows that have room for more below their marks. */
  RowLabels withRoomBelow(double room) {
    return new RowLabels(lines, width, least + room);
  }

  /** Where the next column begins. */
  double right() {
    return areAbove() ? Sheet.MARGIN : Sheet.MARGIN + width + GAP;
  }

  private boolean areAbove() {
    return width == 0;
  }

  /** The height of a row, with its name. */
  double height(int row) {
    return areAbove()
        ? above(row) + least
        : Math.max(least, lines.get(row).size() * Face.PLAIN.lineHeight() + AROUND);
  }

  /** How far below the top of a row its marks begin. */
  double above(int row) {
    return areAbove() ? lines.get(row).size() * Face.PLAIN.lineHeight() + AROUND / 2 : 0;
  }

  /** The height at which the marks of a row stand. */
  double middle(int row, Box box) {
    double above = above(row);
    return above + (box.y() + box.bottom() - above) / 2;
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
      double middle = areAbove() ? box.y() + (above(row) + AROUND / 2) / 2 : box.middle();
      sketch.block(box.x(), middle, Anchor.START, Face.PLAIN, lines.get(row));
    }
  }
}
