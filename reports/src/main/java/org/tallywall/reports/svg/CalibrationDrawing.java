package org.tallywall.reports.svg;

import java.math.BigDecimal;
import java.util.List;
import org.tallywall.reports.figure.CalibrationPlot;
import org.tallywall.reports.figure.CalibrationPlot.Point;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.figure.Standing;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Rounding;

/** Draws what was foretold against what came, in a square field; the numbers stand beside it. */
final class CalibrationDrawing {
  private static final double SIDE = 500;
  private static final double GAP = 16;
  private static final double LIST_GAP = 60;
  private static final double COLUMN = 180;
  private static final int MOST_TICKS = 6;
  private static final Sign SIGN = Sign.MINUS_ONLY;

  private final CalibrationPlot plot;
  private final Sheet sheet;
  private final Sketch sketch;

  CalibrationDrawing(CalibrationPlot plot, Sheet sheet) {
    this.plot = plot;
    this.sheet = sheet;
    this.sketch = sheet.sketch();
  }

  void draw() {
    sheet.legend(List.of(Key.zero("what was foretold is what came")));
    Ticks ticks = Ticks.of(0, highest(), MOST_TICKS);
    double left = Sheet.MARGIN + Sheet.widest(Ruler.labels(ticks, SIGN), Face.SMALL) + GAP;
    Headings headings = new Headings();
    headings.add(Sheet.MARGIN, Anchor.START, plot.seen().words(), left + SIDE - Sheet.MARGIN);
    if (sheet.isNarrow()) {
      headings.draw(sheet);
      square(ticks, left);
      Headings listed = new Headings();
      listed(listed, Sheet.MARGIN);
      listed.draw(sheet);
      sheet.use(list(Sheet.MARGIN, sheet.used()) - sheet.used());
    } else {
      double list = left + SIDE + LIST_GAP;
      listed(headings, list);
      headings.draw(sheet);
      double lines = list(list, sheet.used());
      square(ticks, left);
      sheet.use(Math.max(0, lines - sheet.used()));
    }
  }

  private void listed(Headings headings, double x) {
    headings.add(x, Anchor.START, "foretold", COLUMN - 20);
    headings.add(x + COLUMN, Anchor.START, "came", 380);
    headings.add(sheet.right(), Anchor.END, plot.counted(), 200);
  }

  private void square(Ticks ticks, double left) {
    field(ticks, new Box(left, sheet.used() + GAP, SIDE, SIDE));
    sheet.use(GAP + SIDE + Face.SMALL.lineHeight() * 1.5);
    Headings below = new Headings();
    below.add(left, Anchor.START, plot.foretold().words(), SIDE);
    below.draw(sheet);
  }

  private double highest() {
    double highest = 0;
    for (Point point : plot.points()) {
      highest = Math.max(highest, Math.max(point.foretold(), point.seen().high()));
    }
    return highest;
  }

  private void field(Ticks ticks, Box field) {
    Ruler across = new Ruler(ticks, field.x(), field.right());
    Ruler up = new Ruler(ticks, field.bottom(), field.y());
    across.drawAcross(sheet, field, SIGN);
    up.drawUpward(sketch, field, SIGN);
    sketch.line(field.x(), field.bottom(), field.right(), field.y(), Stroke.ZERO);
    for (Point point : plot.points()) {
      double x = across.at(point.foretold());
      PlotValue seen = point.seen();
      Sketch group = sketch.group(foretold(point) + ": " + seen.text(SIGN));
      double low = Math.min(field.bottom(), up.at(seen.low()));
      group.line(x, low, x, up.at(seen.high()), Stroke.RANGE);
      group.mark(x, up.at(seen.value()), Standing.COMPARED);
    }
  }

  /** The numbers of every point; gives how far down they reach. */
  private double list(double x, double top) {
    double y = top;
    for (Point point : plot.points()) {
      y += Face.SMALL.lineHeight() * 1.35;
      sketch.text(x, y, Anchor.START, Face.SMALL, foretold(point));
      sketch.text(x + COLUMN, y, Anchor.START, Face.SMALL, point.seen().text(SIGN));
      String count = CellText.grouped(Long.toString(point.count()));
      sketch.text(sheet.right(), y, Anchor.END, Face.SMALL, count);
    }
    return y;
  }

  private static String foretold(Point point) {
    BigDecimal rounded = Rounding.nearest(point.foretold(), 1);
    return PlotValue.number(rounded, SIGN);
  }
}
