package org.tallywall.reports.svg;

import java.util.List;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Sign;

/**
 * From numbers to places along an axis.
 *
 * @param ticks the numbers at its ends and between
 * @param from the place of the lowest
 * @param to the place of the highest
 */
record Ruler(Ticks ticks, double from, double to) {
  /** Room between two labels. */
  private static final double GAP = 34;

  private static final int MOST = 12;

  /** A ruler from left to right with as many ticks as have room for their labels. */
  static Ruler across(double low, double high, Box box, Sign sign) {
    for (int most = MOST; most > 1; most--) {
      Ticks ticks = Ticks.of(low, high, most);
      double label = Sheet.widest(labels(ticks, sign), Face.SMALL) + GAP;
      if (label * (ticks.values().size() - 1) <= box.width()) {
        return new Ruler(ticks, box.x(), box.right());
      }
    }
    return new Ruler(Ticks.of(low, high, 1), box.x(), box.right());
  }

  /** A ruler from bottom to top. */
  static Ruler upward(double low, double high, Box box, int most) {
    return new Ruler(Ticks.of(low, high, most), box.bottom(), box.y());
  }

  static List<String> labels(Ticks ticks, Sign sign) {
    return ticks.values().stream().map(value -> PlotValue.number(value, sign)).toList();
  }

  /** Upright grid lines and, below, their numbers, as far as these have room. */
  void drawAcross(Sheet sheet, Box box, Sign sign) {
    List<String> labels = labels(ticks, sign);
    Sketch sketch = sheet.sketch();
    double free = sheet.leftEdge();
    for (int i = 0; i < labels.size(); i++) {
      double x = at(ticks.values().get(i).doubleValue());
      sketch.line(x, box.y(), x, box.bottom(), Stroke.GRID);
      double base = box.bottom() + Face.SMALL.lineHeight();
      double half = TextWidth.of(labels.get(i), Face.SMALL) / 2;
      double middle = Math.max(sheet.leftEdge() + half, Math.min(sheet.rightEdge() - half, x));
      if (middle - half >= free) {
        sketch.text(middle, base, Anchor.MIDDLE, Face.SMALL, labels.get(i));
        free = middle + half + GAP / 4;
      }
    }
  }

  /** Level grid lines and, at the left, their numbers. */
  void drawUpward(Sketch sketch, Box box, Sign sign) {
    List<String> labels = labels(ticks, sign);
    for (int i = 0; i < labels.size(); i++) {
      double y = at(ticks.values().get(i).doubleValue());
      sketch.line(box.x(), y, box.right(), y, Stroke.GRID);
      sketch.block(box.x() - GAP / 2, y, Anchor.END, Face.SMALL, List.of(labels.get(i)));
    }
  }

  double at(double value) {
    return from + (value - ticks.low()) / (ticks.high() - ticks.low()) * (to - from);
  }
}
