package org.tallywall.reports.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tallywall.reports.figure.IntervalPlot;
import org.tallywall.reports.figure.IntervalPlot.Panel;
import org.tallywall.reports.figure.IntervalPlot.Spot;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Scale;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.figure.Standing;

/**
 * Draws dots with their ranges; the numbers stand at the right of each panel, in two lines where
 * the field would become too narrow beside them.
 */
final class IntervalDrawing {
  private static final double ONE_PANEL_LABELS = 480;
  private static final double TWO_PANEL_LABELS = 300;
  private static final double GAP = 44;
  private static final double TEXT_GAP = 22;
  private static final double LEAST_FIELD = 260;
  private static final double MOST_WORDS = 240;

  private final IntervalPlot plot;
  private final Sheet sheet;
  private final Sketch sketch;
  private boolean twoLines;

  IntervalDrawing(IntervalPlot plot, Sheet sheet) {
    this.plot = plot;
    this.sheet = sheet;
    this.sketch = sheet.sketch();
  }

  void draw() {
    sheet.legend(keys());
    List<Integer> panels = IntStream.range(0, plot.panels().size()).boxed().toList();
    if (sheet.isNarrow()) {
      panels.forEach(panel -> draw(List.of(panel)));
    } else {
      draw(panels);
    }
  }

  /** Draws panels side by side. */
  private void draw(List<Integer> panels) {
    List<String> names = plot.rows().stream().map(IntervalPlot.Row::label).toList();
    double most = panels.size() == 1 ? ONE_PANEL_LABELS : TWO_PANEL_LABELS;
    RowLabels labels = RowLabels.of(names, most, sheet);
    double width = (sheet.right() - labels.right() - (panels.size() - 1) * GAP) / panels.size();
    twoLines = width - widestNumbers() - TEXT_GAP < LEAST_FIELD;
    labels = twoLines ? labels.inTallRows() : labels;
    headings(panels, labels, width);
    List<Box> rows = labels.boxes(sheet);
    labels.draw(sketch, rows);
    double height = rows.get(rows.size() - 1).bottom() - sheet.used();
    for (int i = 0; i < panels.size(); i++) {
      double x = labels.right() + i * (width + GAP);
      panel(panels.get(i), new Box(x, sheet.used(), width, height), middles(labels, rows));
    }
    sheet.use(height + Face.SMALL.lineHeight() * 1.4);
  }

  private static double[] middles(RowLabels labels, List<Box> rows) {
    return IntStream.range(0, rows.size())
        .mapToDouble(row -> labels.middle(row, rows.get(row)))
        .toArray();
  }

  private List<Key> keys() {
    List<Key> keys = new ArrayList<>();
    if (plot.rows().stream().anyMatch(row -> row.standing() == Standing.BASELINE)) {
      keys.add(Key.baseline());
    }
    plot.panels().stream()
        .filter(panel -> !panel.zeroWords().isBlank())
        .forEach(panel -> keys.add(Key.zero(panel.zeroWords())));
    return keys;
  }

  private void headings(List<Integer> panels, RowLabels labels, double width) {
    Headings headings = new Headings();
    if (!sheet.isNarrow()) {
      headings.add(Sheet.MARGIN, Anchor.START, plot.rowsName(), labels.right() - Sheet.MARGIN);
    }
    for (int i = 0; i < panels.size(); i++) {
      double x = labels.right() + i * (width + GAP);
      headings.add(x, Anchor.START, plot.panels().get(panels.get(i)).axis().words(), width);
    }
    headings.draw(sheet);
  }

  private void panel(int number, Box box, double[] middles) {
    Panel panel = plot.panels().get(number);
    Sign sign = panel.scale().sign();
    List<Spot> spots = plot.rows().stream().map(row -> row.spots().get(number)).toList();
    double texts =
        spots.stream().mapToDouble(s -> Sheet.widest(words(s, sign), Face.SMALL)).max().orElse(0);
    Box field = new Box(box.x(), box.y(), box.width() - texts - TEXT_GAP, box.height());
    Ruler ruler = ruler(panel, spots, field);
    ruler.drawAcross(sheet, field, sign);
    if (panel.scale() == Scale.DIFFERENCE) {
      sketch.line(ruler.at(0), field.y(), ruler.at(0), field.bottom(), Stroke.ZERO);
    }
    for (int row = 0; row < middles.length; row++) {
      double y = middles[row];
      Standing standing = plot.rows().get(row).standing();
      Spot spot = spots.get(row);
      spot.estimate().ifPresent(estimate -> mark(ruler, y, standing, estimate));
      Face face = spot.estimate().isPresent() ? Face.SMALL : Face.FAINT;
      sketch.block(box.right() - texts, y, Anchor.START, face, words(spot, sign));
    }
  }

  private static Ruler ruler(Panel panel, List<Spot> spots, Box field) {
    List<PlotValue> all = spots.stream().map(Spot::estimate).flatMap(Optional::stream).toList();
    Range range = Range.of(all);
    range = panel.scale() == Scale.DIFFERENCE || all.isEmpty() ? range.with(0) : range;
    return Ruler.across(range.low(), range.high(), field, panel.scale().sign());
  }

  private void mark(Ruler ruler, double y, Standing standing, PlotValue estimate) {
    double from = ruler.at(estimate.low());
    double to = ruler.at(estimate.high());
    sketch.line(from, y, to, y, Stroke.RANGE);
    for (double end : new double[] {from, to}) {
      sketch.line(end, y - Sketch.MARK, end, y + Sketch.MARK, Stroke.RANGE);
    }
    sketch.mark(ruler.at(estimate.value()), y, standing);
  }

  private double widestNumbers() {
    double widest = 0;
    for (int i = 0; i < plot.panels().size(); i++) {
      Sign sign = plot.panels().get(i).scale().sign();
      for (IntervalPlot.Row row : plot.rows()) {
        widest = Math.max(widest, Sheet.widest(words(row.spots().get(i), sign), Face.SMALL));
      }
    }
    return widest;
  }

  private List<String> words(Spot spot, Sign sign) {
    if (spot.estimate().isEmpty()) {
      return Lines.wrap(spot.words(), MOST_WORDS, Face.SMALL);
    }
    PlotValue estimate = spot.estimate().get();
    return twoLines
        ? List.of(estimate.valueText(sign), "(" + estimate.rangeText(sign) + ")")
        : List.of(estimate.text(sign));
  }
}
