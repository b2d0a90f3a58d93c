package org.tallywall.reports.svg;

import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.reports.figure.PairedDots;
import org.tallywall.reports.figure.PairedDots.Row;
import org.tallywall.reports.figure.Sign;

/** Draws a dot and a diamond in each row, a bar between them, and texts at the right. */
final class PairDrawing {
  private static final double LABELS = 420;
  private static final double COLUMN_GAP = 32;
  private static final double LEAST_COLUMN = 110;
  private static final double MOST_HEADING = 200;

  private final PairedDots dots;
  private final Sheet sheet;
  private final Sketch sketch;

  PairDrawing(PairedDots dots, Sheet sheet) {
    this.dots = dots;
    this.sheet = sheet;
    this.sketch = sheet.sketch();
  }

  void draw() {
    sheet.legend(
        List.of(
            new Key(dots.first(), (s, x, y) -> s.dot(x, y, Color.BLUE)),
            new Key(dots.second(), (s, x, y) -> s.diamond(x, y, Color.VERMILION))));
    RowLabels labels = RowLabels.of(dots.rows().stream().map(Row::label).toList(), LABELS);
    double[] ends = columnEnds();
    double right = ends.length == 0 ? sheet.right() : ends[0] - columnWidth(0);
    double width = right - COLUMN_GAP - labels.right();
    headings(labels, ends, width);
    List<Box> rows = labels.boxes(sheet);
    labels.draw(sketch, rows);
    double height = rows.get(rows.size() - 1).bottom() - sheet.used();
    Box field = new Box(labels.right(), sheet.used(), width, height);
    Ruler ruler = ruler(field);
    ruler.drawAcross(sketch, field, Sign.MINUS_ONLY);
    for (int i = 0; i < rows.size(); i++) {
      row(dots.rows().get(i), ruler, rows.get(i).middle(), ends);
    }
    sheet.use(height + Face.SMALL.lineHeight() * 1.4);
  }

  private void headings(RowLabels labels, double[] ends, double width) {
    Headings headings = new Headings();
    headings.add(Sheet.MARGIN, Anchor.START, dots.rowsName(), labels.right() - Sheet.MARGIN);
    headings.add(labels.right(), Anchor.START, dots.axis().words(), width);
    for (int i = 0; i < ends.length; i++) {
      headings.add(ends[i], Anchor.END, dots.further().get(i), columnWidth(i));
    }
    headings.draw(sheet);
  }

  private Ruler ruler(Box field) {
    Range range = new Range(0, 0);
    for (Row row : dots.rows()) {
      range = range.with(row.first().orElse(0)).with(row.second().orElse(0));
    }
    return Ruler.across(range.low(), range.high(), field, Sign.MINUS_ONLY);
  }

  private void row(Row row, Ruler ruler, double y, double[] ends) {
    OptionalDouble first = row.first();
    OptionalDouble second = row.second();
    if (first.isPresent() && second.isPresent()) {
      double from = ruler.at(first.getAsDouble());
      double to = ruler.at(second.getAsDouble());
      sketch.line(from, y, to, y, Stroke.of(Color.LINE, 6));
    }
    second.ifPresent(value -> sketch.diamond(ruler.at(value), y, Color.VERMILION));
    first.ifPresent(value -> sketch.dot(ruler.at(value), y, Color.BLUE));
    for (int i = 0; i < ends.length; i++) {
      if (!row.further().get(i).isBlank()) {
        sketch.block(ends[i], y, Anchor.END, Face.SMALL, List.of(row.further().get(i)));
      }
    }
  }

  private double[] columnEnds() {
    double[] ends = new double[dots.further().size()];
    double end = sheet.right();
    for (int i = ends.length - 1; i >= 0; i--) {
      ends[i] = end;
      end -= columnWidth(i) + COLUMN_GAP;
    }
    return ends;
  }

  private double columnWidth(int column) {
    List<String> texts = dots.rows().stream().map(row -> row.further().get(column)).toList();
    double heading = Math.min(MOST_HEADING, TextWidth.of(dots.further().get(column), Face.STRONG));
    return Math.max(LEAST_COLUMN, Math.max(heading, Sheet.widest(texts, Face.SMALL)));
  }
}
