package org.tallywall.reports.svg;

import java.util.ArrayList;
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
  private static final double LEAST_FIELD = 200;
  private static final double NARROW_COLUMN = 115;

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
    double[] ends = columnEnds();
    double right = ends.length == 0 ? sheet.right() : ends[0] - columnWidth(0) - gap();
    boolean below = sheet.isNarrow() && right - Sheet.MARGIN < LEAST_FIELD;
    draw(below ? new double[0] : ends, below ? sheet.right() : right, below);
  }

  /** Draws the field up to its right side, and the texts in columns or below the marks. */
  private void draw(double[] ends, double right, boolean below) {
    List<List<String>> texts =
        dots.rows().stream().map(row -> below ? below(row) : none()).toList();
    int most = texts.stream().mapToInt(List::size).max().orElse(0);
    double under = most * Face.SMALL.lineHeight();
    List<String> names = dots.rows().stream().map(Row::label).toList();
    RowLabels labels = RowLabels.of(names, LABELS, sheet).withRoomBelow(under);
    double width = right - labels.right();
    headings(labels, ends, width);
    List<Box> rows = labels.boxes(sheet);
    labels.draw(sketch, rows);
    double height = rows.get(rows.size() - 1).bottom() - sheet.used();
    Box field = new Box(labels.right(), sheet.used(), width, height);
    Ruler ruler = ruler(field);
    ruler.drawAcross(sheet, field, Sign.MINUS_ONLY);
    for (int i = 0; i < rows.size(); i++) {
      double y = labels.middle(i, rows.get(i)) - under / 2;
      row(dots.rows().get(i), ruler, y, ends);
      double top = rows.get(i).bottom() - under;
      for (String line : texts.get(i)) {
        top += Face.SMALL.lineHeight();
        sketch.text(Sheet.MARGIN, top - 8, Anchor.START, Face.FAINT, line);
      }
    }
    sheet.use(height + Face.SMALL.lineHeight() * 1.4);
  }

  private static List<String> none() {
    return List.of();
  }

  private List<String> below(Row row) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < row.further().size(); i++) {
      if (!row.further().get(i).isBlank()) {
        String words = dots.further().get(i) + ": " + row.further().get(i);
        lines.addAll(Lines.wrap(words, sheet.width(), Face.FAINT));
      }
    }
    return lines;
  }

  private void headings(RowLabels labels, double[] ends, double width) {
    Headings headings = new Headings();
    if (!sheet.isNarrow()) {
      headings.add(Sheet.MARGIN, Anchor.START, dots.rowsName(), labels.right() - Sheet.MARGIN);
    }
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
      end -= columnWidth(i) + gap();
    }
    return ends;
  }

  private double columnWidth(int column) {
    List<String> texts = dots.rows().stream().map(row -> row.further().get(column)).toList();
    String words = dots.further().get(column);
    double heading =
        sheet.isNarrow()
            ? Math.max(NARROW_COLUMN, Sheet.widest(List.of(words.split(" ")), Face.STRONG))
            : Math.max(LEAST_COLUMN, Math.min(MOST_HEADING, TextWidth.of(words, Face.STRONG)));
    return Math.max(heading, Sheet.widest(texts, Face.SMALL));
  }

  private double gap() {
    return sheet.isNarrow() ? COLUMN_GAP * 0.7 : COLUMN_GAP;
  }
}
