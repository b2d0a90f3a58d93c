package org.tallywall.reports.svg;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tallywall.reports.figure.Estimate;
import org.tallywall.reports.figure.PartBars;
import org.tallywall.reports.figure.PartBars.Bar;
import org.tallywall.reports.figure.PartBars.Change;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.table.Rounding;

/**
 * Draws bars of parts. A number stands in its part where there is room and above it elsewhere;
 * differences hang below their parts.
 */
final class PartDrawing {
  private static final double LABELS = 340;
  private static final double BAR = 66;
  private static final double ABOVE = 44;
  private static final double LEADER = 16;
  private static final double BETWEEN = 18;
  private static final double PLAQUE = 7;
  private static final int PLACES = 1;
  private static final int MOST_TICKS = 5;

  private final PartBars bars;
  private final Sheet sheet;
  private final Sketch sketch;
  private final RowLabels labels;
  private final Ruler ruler;

  PartDrawing(PartBars bars, Sheet sheet) {
    this.bars = bars;
    this.sheet = sheet;
    this.sketch = sheet.sketch();
    this.labels = RowLabels.of(bars.bars().stream().map(Bar::label).toList(), LABELS);
    Ticks ticks = Ticks.of(0, PartBars.WHOLE, MOST_TICKS);
    this.ruler = new Ruler(ticks, labels.right(), Sheet.RIGHT - 30);
  }

  void draw() {
    sheet.legend(keys());
    Headings headings = new Headings();
    headings.add(ruler.from(), Anchor.START, bars.axis().words(), Sheet.RIGHT - ruler.from());
    headings.draw(sheet);
    for (int i = 0; i < bars.bars().size(); i++) {
      bar(i);
    }
    double length = ruler.to() - ruler.from();
    Box field = new Box(ruler.from(), sheet.used(), length, 10);
    ruler.drawAcross(sketch, field, Sign.MINUS_ONLY);
    sheet.use(Face.SMALL.lineHeight() * 1.4 + 10);
  }

  private List<Key> keys() {
    List<Key> keys = new ArrayList<>();
    for (int part = 0; part < bars.parts().size(); part++) {
      String fill = sheet.fill(Pattern.values()[part]);
      Key.Mark swatch =
          (s, x, y) -> s.box(new Box(x - 24, y - 14, 48, 28), fill, Stroke.of(Colour.INK, 2));
      keys.add(new Key(bars.parts().get(part), swatch));
    }
    return keys;
  }

  private void bar(int number) {
    Bar bar = bars.bars().get(number);
    List<Box> segments = segments(bar, sheet.used() + ABOVE);
    List<Integer> narrow = new ArrayList<>();
    for (int part = 0; part < segments.size(); part++) {
      Box segment = segments.get(part);
      String value = number(bar, part);
      Sketch group = sketch.group(bar.label() + ", " + bars.parts().get(part) + ": " + value);
      group.box(segment, sheet.fill(Pattern.values()[part]), Stroke.of(Colour.INK, 2));
      double width = TextWidth.of(value, Face.SMALL) + 2 * PLAQUE;
      if (width + 2 * PLAQUE <= segment.width()) {
        plaque(segment, width, value);
      } else if (segment.width() > 0) {
        narrow.add(part);
      }
    }
    above(bar, segments, narrow);
    double middle = segments.get(0).middle();
    sketch.block(Sheet.MARGIN, middle, Anchor.START, Face.PLAIN, labels.lines().get(number));
    double below = Math.max(changes(number, segments), excess(number));
    sheet.use(ABOVE + BAR + below + BETWEEN);
  }

  private List<Box> segments(Bar bar, double top) {
    List<Box> segments = new ArrayList<>();
    double sum = 0;
    for (double value : bar.values()) {
      double from = ruler.at(sum);
      sum += value;
      segments.add(new Box(from, top, ruler.at(sum) - from, BAR));
    }
    return segments;
  }

  private void plaque(Box segment, double width, String number) {
    double height = Face.SMALL.size() + 10;
    Box box = new Box(segment.centre() - width / 2, segment.middle() - height / 2, width, height);
    sketch.box(box, Colour.WHITE.code());
    sketch.block(box.centre(), box.middle(), Anchor.MIDDLE, Face.SMALL, List.of(number));
  }

  /** Numbers of parts that are too narrow to hold them. */
  private void above(Bar bar, List<Box> segments, List<Integer> narrow) {
    List<String> numbers = narrow.stream().map(part -> number(bar, part)).toList();
    double[] wished = narrow.stream().mapToDouble(part -> segments.get(part).centre()).toArray();
    double[] middles = Spread.apart(wished, widths(numbers), ruler.from(), Sheet.RIGHT);
    for (int i = 0; i < middles.length; i++) {
      double top = segments.get(0).y();
      sketch.text(middles[i], top - LEADER, Anchor.MIDDLE, Face.SMALL, numbers.get(i));
      sketch.line(wished[i], top, middles[i], top - LEADER + 4, Stroke.AXIS);
    }
  }

  /** Differences below their parts; gives the height that they take. */
  private double changes(int number, List<Box> segments) {
    List<Change> own =
        bars.changes().stream()
            .filter(change -> change.bar() == number)
            .sorted(Comparator.comparingInt(Change::part))
            .toList();
    double room = (Sheet.RIGHT - Sheet.MARGIN) / 2 - 20;
    List<List<String>> names =
        own.stream().map(c -> Lines.wrap(bars.parts().get(c.part()), room, Face.SMALL)).toList();
    List<String> numbers = own.stream().map(c -> c.difference().text(Sign.PLUS_AND_MINUS)).toList();
    double[] widths = widths(numbers);
    double[] wished = new double[own.size()];
    for (int i = 0; i < wished.length; i++) {
      widths[i] = Math.max(Sheet.widest(names.get(i), Face.SMALL), widths[i] * 1.2);
      wished[i] = segments.get(own.get(i).part()).centre();
    }
    double[] middles = Spread.apart(wished, widths, Sheet.MARGIN, Sheet.RIGHT);
    double deepest = 0;
    for (int i = 0; i < middles.length; i++) {
      double y = segments.get(0).bottom();
      sketch.line(wished[i], y, middles[i], y + LEADER, Stroke.of(Colour.INK, 3));
      y += LEADER + 4;
      for (String line : names.get(i)) {
        y += Face.SMALL.lineHeight();
        sketch.text(middles[i], y - 6, Anchor.MIDDLE, Face.SMALL, line);
      }
      y += Face.STRONG.lineHeight();
      sketch.text(middles[i], y - 6, Anchor.MIDDLE, Face.STRONG, numbers.get(i));
      deepest = Math.max(deepest, y - segments.get(0).bottom());
    }
    return deepest;
  }

  /** By how much a long name hangs below its bar. */
  private double excess(int number) {
    return Math.max(0, (labels.height(number) - BAR) / 2);
  }

  private static double[] widths(List<String> numbers) {
    return numbers.stream().mapToDouble(text -> TextWidth.of(text, Face.SMALL)).toArray();
  }

  private static String number(Bar bar, int part) {
    BigDecimal rounded = Rounding.nearest(bar.values().get(part), PLACES);
    return Estimate.number(rounded, Sign.MINUS_ONLY);
  }
}
