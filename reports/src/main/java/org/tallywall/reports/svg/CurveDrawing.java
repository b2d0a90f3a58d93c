package org.tallywall.reports.svg;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.figure.BandCurve;
import org.tallywall.reports.figure.BandCurve.Point;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Scale;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.figure.Standing;

/** Draws a curve with its band, a bar and a mark at every point. */
final class CurveDrawing {
  private static final double HEIGHT = 440;
  private static final double SIDE = 60;
  private static final double GAP = 16;
  private static final int MOST_TICKS = 7;

  private final BandCurve curve;
  private final Sheet sheet;
  private final Sketch sketch;
  private final Sign sign;

  CurveDrawing(BandCurve curve, Sheet sheet) {
    this.curve = curve;
    this.sheet = sheet;
    this.sketch = sheet.sketch();
    this.sign = curve.scale().sign();
  }

  void draw() {
    sheet.legend(keys());
    Headings headings = new Headings();
    headings.add(Sheet.MARGIN, Anchor.START, curve.up().words(), sheet.width());
    headings.draw(sheet);
    Ruler up = upward();
    double left = Sheet.MARGIN + Sheet.widest(Ruler.labels(up.ticks(), sign), Face.SMALL) + GAP;
    Box field = new Box(left, sheet.used() + GAP, sheet.right() - left, HEIGHT);
    up = new Ruler(up.ticks(), field.bottom(), field.y());
    up.drawUpward(sketch, field, sign);
    double[] places = places(field);
    band(up, places);
    if (curve.scale() == Scale.DIFFERENCE) {
      sketch.line(field.x(), up.at(0), field.right(), up.at(0), Stroke.ZERO);
    }
    points(up, places);
    sheet.use(GAP + HEIGHT + GAP / 2);
    List<String> labels = curve.points().stream().map(Point::label).toList();
    new LabelsBelow(sheet, labels, places).draw();
    Headings below = new Headings();
    below.add(field.center(), Anchor.MIDDLE, curve.across().words(), field.width());
    below.draw(sheet);
  }

  private List<Key> keys() {
    List<Key> keys = new ArrayList<>();
    if (curve.points().stream().anyMatch(point -> point.standing() == Standing.BASELINE)) {
      keys.add(Key.baseline());
    }
    if (!curve.zeroWords().isBlank()) {
      keys.add(Key.zero(curve.zeroWords()));
    }
    return keys;
  }

  private Ruler upward() {
    Range range = Range.of(curve.points().stream().map(Point::estimate).toList());
    range = curve.scale() == Scale.DIFFERENCE ? range.with(0) : range;
    double head = (range.high() - range.low()) * 0.06;
    return new Ruler(Ticks.of(range.low(), range.high() + head, MOST_TICKS), HEIGHT, 0);
  }

  private double[] places(Box field) {
    double first = curve.points().get(0).at();
    double last = curve.points().get(curve.points().size() - 1).at();
    double room = field.width() - 2 * SIDE;
    return curve.points().stream()
        .mapToDouble(p -> field.x() + SIDE + (p.at() - first) / (last - first) * room)
        .toArray();
  }

  private void band(Ruler up, double[] places) {
    List<PlotValue> all = curve.points().stream().map(Point::estimate).toList();
    Path band = Path.at(places[0], up.at(all.get(0).high()));
    Path line = Path.at(places[0], up.at(all.get(0).value()));
    for (int i = 1; i < places.length; i++) {
      band.to(places[i], up.at(all.get(i).high()));
      line.to(places[i], up.at(all.get(i).value()));
    }
    for (int i = places.length - 1; i >= 0; i--) {
      band.to(places[i], up.at(all.get(i).low()));
    }
    sketch.area(band.closed(), Color.BAND);
    sketch.path(line.open(), Stroke.of(Color.BLUE, 4));
  }

  private void points(Ruler up, double[] places) {
    boolean room = LabelsBelow.nearest(sheet, places) >= widestValue() + GAP;
    for (int i = 0; i < places.length; i++) {
      Point point = curve.points().get(i);
      PlotValue estimate = point.estimate();
      Sketch group = sketch.group(point.label() + ": " + estimate.text(sign));
      double top = up.at(Math.max(estimate.high(), estimate.value()));
      group.line(places[i], up.at(estimate.low()), places[i], up.at(estimate.high()), Stroke.RANGE);
      group.mark(places[i], up.at(estimate.value()), point.standing());
      if (room && point.standing() == Standing.COMPARED) {
        double base = Math.min(top, up.at(estimate.value()) - Sketch.MARK) - GAP / 2;
        sketch.onWhite(places[i], base, estimate.valueText(sign));
      }
    }
  }

  private double widestValue() {
    return Sheet.widest(
        curve.points().stream().map(point -> point.estimate().valueText(sign)).toList(),
        Face.SMALL);
  }
}
