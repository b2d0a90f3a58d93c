package org.tallywall.reports.svg;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.figure.ExactLines;
import org.tallywall.reports.figure.ExactLines.Line;
import org.tallywall.reports.figure.ExactLines.Point;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.table.Rounding;

/**
 * Draws lines through exact numbers. Lines differ by mark and dashes; a line that stands alone has
 * its numbers at its points where there is room for them.
 */
final class ExactDrawing {
  private static final double HEIGHT = 440;
  private static final double SIDE = 60;
  private static final double GAP = 16;
  private static final int MOST_TICKS = 7;
  private static final double NUMBER = 24;
  private static final int PLACES = 1;
  private static final List<Stroke> STROKES =
      List.of(
          Stroke.of(Color.BLUE, 4),
          new Stroke(Color.VERMILION, 4, "16 8"),
          new Stroke(Color.GREEN, 4, "4 8"));

  private final ExactLines figure;
  private final Sheet sheet;
  private final Sketch sketch;

  ExactDrawing(ExactLines figure, Sheet sheet) {
    this.figure = figure;
    this.sheet = sheet;
    this.sketch = sheet.sketch();
  }

  void draw() {
    Ticks ticks = Ticks.of(0, highest(), MOST_TICKS);
    double left =
        Sheet.MARGIN + Sheet.widest(Ruler.labels(ticks, Sign.MINUS_ONLY), Face.SMALL) + GAP;
    double[] places = places(left, sheet.right() - left);
    boolean marks = LabelsBelow.nearest(sheet, places) >= 2 * Sketch.MARK + 4;
    sheet.legend(keys(marks));
    Headings headings = new Headings();
    headings.add(Sheet.MARGIN, Anchor.START, figure.up().words(), sheet.width());
    headings.draw(sheet);
    boolean numbers = numbers(places);
    double above = GAP + (numbers ? NUMBER : 0);
    Box field = new Box(left, sheet.used() + above, sheet.right() - left, HEIGHT);
    Ruler up = new Ruler(ticks, field.bottom(), field.y());
    up.drawUpward(sketch, field, Sign.MINUS_ONLY);
    for (int i = figure.lines().size() - 1; i >= 0; i--) {
      line(i, up, places, marks, numbers);
    }
    sheet.use(above + HEIGHT + GAP / 2);
    new LabelsBelow(sheet, labels(), places).drawNumbers();
    Headings below = new Headings();
    below.add(field.center(), Anchor.MIDDLE, figure.across().words(), field.width());
    below.draw(sheet);
  }

  /** A line that stands alone needs no legend: the axis says what it is. */
  private List<Key> keys(boolean marks) {
    List<Key> keys = new ArrayList<>();
    for (int i = 0; i < figure.lines().size() && figure.lines().size() > 1; i++) {
      int line = i;
      keys.add(
          new Key(
              figure.lines().get(i).name(),
              (s, x, y) -> {
                s.line(x - Key.MARK_AT, y, x + Key.MARK_AT, y, STROKES.get(line));
                if (marks) {
                  mark(s, line, x, y);
                }
              }));
    }
    return keys;
  }

  /** Whether numbers stand at the points: where there is one line, and room for them. */
  private boolean numbers(double[] places) {
    return figure.lines().size() == 1
        && LabelsBelow.nearest(sheet, places) >= widest(first()) + GAP;
  }

  private double highest() {
    double highest = 0;
    for (Line line : figure.lines()) {
      for (Point point : line.points()) {
        highest = Math.max(highest, point.value());
      }
    }
    return highest == 0 ? 1 : highest;
  }

  private List<Point> first() {
    return figure.lines().get(0).points();
  }

  private List<String> labels() {
    return first().stream().map(point -> Integer.toString(point.at())).toList();
  }

  private double[] places(double left, double width) {
    double from = first().get(0).at();
    double to = first().get(first().size() - 1).at();
    double room = width - 2 * SIDE;
    return first().stream()
        .mapToDouble(point -> left + SIDE + (point.at() - from) / (to - from) * room)
        .toArray();
  }

  private void line(int number, Ruler up, double[] places, boolean marks, boolean numbers) {
    List<Point> points = figure.lines().get(number).points();
    Path path = Path.at(places[0], up.at(points.get(0).value()));
    for (int i = 1; i < places.length; i++) {
      path.to(places[i], up.at(points.get(i).value()));
    }
    sketch.path(path.open(), STROKES.get(number));
    for (int i = 0; i < places.length; i++) {
      double y = up.at(points.get(i).value());
      if (marks) {
        String where = labels().get(i) + ": " + figure.lines().get(number).name();
        mark(sketch.group(where + ", " + text(points.get(i))), number, places[i], y);
      }
      if (numbers) {
        sketch.onWhite(places[i], y - Sketch.MARK - GAP / 2, text(points.get(i)));
      }
    }
  }

  private static void mark(Sketch at, int line, double x, double y) {
    Color color = STROKES.get(line).color();
    if (line == 0) {
      at.dot(x, y, color);
    } else if (line == 1) {
      at.square(x, y, color);
    } else {
      at.diamond(x, y, color);
    }
  }

  private static double widest(List<Point> points) {
    return Sheet.widest(points.stream().map(ExactDrawing::text).toList(), Face.SMALL);
  }

  private static String text(Point point) {
    return PlotValue.number(Rounding.nearest(point.value(), PLACES), Sign.MINUS_ONLY);
  }
}
