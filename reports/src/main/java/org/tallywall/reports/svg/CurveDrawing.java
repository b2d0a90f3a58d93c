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
    settings(places);
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
    boolean room = nearest(places) >= widestValue() + GAP;
    for (int i = 0; i < places.length; i++) {
      Point point = curve.points().get(i);
      PlotValue estimate = point.estimate();
      Sketch group = sketch.group(point.label() + ": " + estimate.text(sign));
      double top = up.at(Math.max(estimate.high(), estimate.value()));
      group.line(places[i], up.at(estimate.low()), places[i], up.at(estimate.high()), Stroke.RANGE);
      group.mark(places[i], up.at(estimate.value()), point.standing());
      if (room && point.standing() == Standing.COMPARED) {
        double base = Math.min(top, up.at(estimate.value()) - Sketch.MARK) - GAP / 2;
        value(places[i], base, estimate.valueText(sign));
      }
    }
  }

  /** A number above its bar, on white, so that no line of the field runs through it. */
  private void value(double x, double base, String number) {
    double width = TextWidth.of(number, Face.SMALL);
    double capital = Face.SMALL.size() * 0.72;
    sketch.box(new Box(x - width / 2, base - capital - 3, width, capital + 6), Color.WHITE.code());
    sketch.text(x, base, Anchor.MIDDLE, Face.SMALL, number);
  }

  /** The settings below the field; where they have no room, only every second, third … one. */
  private void settings(double[] places) {
    double room = nearest(places);
    int every = 1;
    while (every < places.length && !fits(every, every * room - GAP)) {
      every++;
    }
    List<Integer> shown = shown(every);
    double width = Math.max(every * room - GAP, longestWord(shown));
    List<List<String>> labels =
        shown.stream().map(i -> Lines.wrap(label(i), width, Face.SMALL)).toList();
    double[] wished = shown.stream().mapToDouble(i -> places[i]).toArray();
    double[] widths = labels.stream().mapToDouble(l -> Sheet.widest(l, Face.SMALL)).toArray();
    double[] middles = Spread.apart(wished, widths, Sheet.MARGIN, sheet.right());
    int most = 1;
    for (int i = 0; i < middles.length; i++) {
      double base = sheet.used() + Face.SMALL.lineHeight();
      for (String line : labels.get(i)) {
        sketch.text(middles[i], base, Anchor.MIDDLE, Face.SMALL, line);
        base += Face.SMALL.lineHeight();
      }
      most = Math.max(most, labels.get(i).size());
    }
    sheet.use((most + 0.6) * Face.SMALL.lineHeight());
  }

  /** Whether labels in this width keep their words whole and have room side by side. */
  private boolean fits(int every, double width) {
    List<Integer> shown = shown(every);
    return width >= longestWord(shown)
        && shown.size() * (Math.min(width, widestLabel(shown)) + GAP) <= sheet.width();
  }

  private List<Integer> shown(int every) {
    List<Integer> shown = new ArrayList<>();
    for (int i = 0; i < curve.points().size(); i += every) {
      shown.add(i);
    }
    return shown;
  }

  private String label(int point) {
    return curve.points().get(point).label();
  }

  private double widestLabel(List<Integer> shown) {
    return Sheet.widest(shown.stream().map(this::label).toList(), Face.SMALL);
  }

  private double longestWord(List<Integer> shown) {
    return shown.stream()
        .mapToDouble(i -> Sheet.widest(List.of(label(i).split(" ")), Face.SMALL))
        .max()
        .orElse(0);
  }

  private double widestValue() {
    return Sheet.widest(
        curve.points().stream().map(point -> point.estimate().valueText(sign)).toList(),
        Face.SMALL);
  }

  private double nearest(double[] places) {
    double nearest = sheet.width();
    for (int i = 1; i < places.length; i++) {
      nearest = Math.min(nearest, places[i] - places[i - 1]);
    }
    return nearest;
  }
}
