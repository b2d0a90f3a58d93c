package org.tallywall.reports.svg;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tallywall.reports.figure.PartBars;
import org.tallywall.reports.figure.PartBars.Bar;
import org.tallywall.reports.figure.PartBars.Change;
import org.tallywall.reports.figure.PlotValue;
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
    this.labels = RowLabels.of(bars.bars().stream().map(Bar::label).toList(), LABELS, sheet);
    Ticks ticks = Ticks.of(0, PartBars.WHOLE, MOST_TICKS);
    this.ruler = new Ruler(ticks, labels.right(), sheet.right() - 30);
  }

  void draw() {
    sheet.legend(keys());
    Headings headings = new Headings();
    headings.add(ruler.from(), Anchor.START, bars.axis().words(), sheet.right() - ruler.from());
    headings.draw(sheet);
    for (int i = 0; i < bars.bars().size(); i++) {
      bar(i);
    }
    double length = ruler.to() - ruler.from();
    Box field = new Box(ruler.from(), sheet.used(), length, 10);
    ruler.drawAcross(sheet, field, Sign.MINUS_ONLY);
    sheet.use(Face.SMALL.lineHeight() * 1.4 + 10);
  }

  private List<Key> keys() {
    List<Key> keys = new ArrayList<>();
    for (int part = 0; part < bars.parts().size(); part++) {
      String fill = sheet.fill(Pattern.values()[part]);
      Key.Mark swatch =
          (s, x, y) -> s.box(new Box(x - 24, y - 14, 48, 28), fill, Stroke.of(Color.INK, 2));
      keys.add(new Key(bars.parts().get(part), swatch));
    }
    return keys;
  }

  private void bar(int number) {
    Bar bar = bars.bars().get(number);
    double above = labels.above(number) + (hasNarrowParts(bar) ? ABOVE : BETWEEN);
    List<Box> segments = segments(bar, sheet.used() + above);
    List<Integer> narrow = new ArrayList<>();
    for (int part = 0; part < segments.size(); part++) {
      Box segment = segments.get(part);
      String value = number(bar, part);
      Sketch group = sketch.group(bar.label() + ", " + bars.parts().get(part) + ": " + value);
      group.box(segment, sheet.fill(Pattern.values()[part]), Stroke.of(Color.INK, 2));
      if (holds(segment.width(), value)) {
        plaque(segment, value);
      } else if (segment.width() > 0) {
        narrow.add(part);
      }
    }
    above(bar, segments, narrow);
    double middle =
        sheet.isNarrow() ? sheet.used() + labels.above(number) / 2 : segments.get(0).middle();
    sketch.block(Sheet.MARGIN, middle, Anchor.START, Face.PLAIN, labels.lines().get(number));
    double below = Math.max(changes(number, segments), excess(number));
    sheet.use(above + BAR + below + BETWEEN);
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

  private boolean hasNarrowParts(Bar bar) {
    for (int part = 0; part < bar.values().size(); part++) {
      double width = ruler.at(bar.values().get(part)) - ruler.at(0);
      if (width > 0 && !holds(width, number(bar, part))) {
        return true;
      }
    }
    return false;
  }

  private static boolean holds(double width, String number) {
    return TextWidth.of(number, Face.SMALL) + 4 * PLAQUE <= width;
  }

  private void plaque(Box segment, String number) {
    double width = TextWidth.of(number, Face.SMALL) + 2 * PLAQUE;
    double height = Face.SMALL.size() + 10;
    Box box = new Box(segment.center() - width / 2, segment.middle() - height / 2, width, height);
    sketch.box(box, Color.WHITE.code());
    sketch.block(box.center(), box.middle(), Anchor.MIDDLE, Face.SMALL, List.of(number));
  }

  /** Numbers of parts that are too narrow to hold them. */
  private void above(Bar bar, List<Box> segments, List<Integer> narrow) {
    List<String> numbers = narrow.stream().map(part -> number(bar, part)).toList();
    double[] wished = narrow.stream().mapToDouble(part -> segments.get(part).center()).toArray();
    double[] widths = widths(numbers);
    double[] middles = Spread.apart(wished, widths, ruler.from(), sheet.right());
    for (int i = 0; i < middles.length; i++) {
      double top = segments.get(0).y();
      sketch.text(middles[i], top - LEADER, Anchor.MIDDLE, Face.SMALL, numbers.get(i));
      leader(wished[i], top, near(wished[i], middles[i], widths[i]), top - LEADER + 4);
    }
  }

  /** Differences below their parts; gives the height that they take. */
  private double changes(int number, List<Box> segments) {
    List<Change> own =
        bars.changes().stream()
            .filter(change -> change.bar() == number)
            .sorted(Comparator.comparingInt(Change::part))
            .toList();
    if (sheet.isNarrow()) {
      return listed(own, segments.get(0).bottom());
    }
    double room = (sheet.right() - labels.right()) / 2 - 20;
    List<List<String>> names =
        own.stream().map(c -> Lines.wrap(bars.parts().get(c.part()), room, Face.SMALL)).toList();
    List<String> numbers = own.stream().map(c -> c.difference().text(Sign.PLUS_AND_MINUS)).toList();
    double[] widths = widths(numbers);
    double[] wished = new double[own.size()];
    for (int i = 0; i < wished.length; i++) {
      widths[i] = Math.max(Sheet.widest(names.get(i), Face.SMALL), widths[i] * 1.2);
      wished[i] = segments.get(own.get(i).part()).center();
    }
    double[] middles = Spread.apart(wished, widths, labels.right(), sheet.right());
    double deepest = 0;
    for (int i = 0; i < middles.length; i++) {
      double y = segments.get(0).bottom();
      leader(wished[i], y, near(wished[i], middles[i], widths[i]), y + LEADER);
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

  /** The same as lines of their own, where there is no room side by side. */
  private double listed(List<Change> own, double bottom) {
    double y = bottom + (own.isEmpty() ? 0 : PLAQUE);
    for (Change change : own) {
      String words =
          bars.parts().get(change.part()) + ": " + change.difference().text(Sign.PLUS_AND_MINUS);
      for (String line : Lines.wrap(words, sheet.width(), Face.STRONG)) {
        y += Face.STRONG.lineHeight();
        sketch.text(Sheet.MARGIN, y - 6, Anchor.START, Face.STRONG, line);
      }
    }
    return y - bottom;
  }

  /** The place over a label that is nearest to a part, a little within its ends. */
  private static double near(double wished, double middle, double width) {
    double reach = Math.max(0, width / 2 - PLAQUE);
    return Math.max(middle - reach, Math.min(middle + reach, wished));
  }

  /** A line from a part to its label, with a step where they are not over one another. */
  private void leader(double x, double y, double toX, double toY) {
    double half = (y + toY) / 2;
    Path path = Path.at(x, y).to(x, half).to(toX, half).to(toX, toY);
    sketch.path(path.open(), Stroke.of(Color.INK, 2));
  }

  /** By how much a long name hangs below its bar. */
  private double excess(int number) {
    return sheet.isNarrow() ? 0 : Math.max(0, (labels.height(number) - BAR) / 2);
  }

  private static double[] widths(List<String> numbers) {
    return numbers.stream().mapToDouble(text -> TextWidth.of(text, Face.SMALL)).toArray();
  }

  private static String number(Bar bar, int part) {
    BigDecimal rounded = Rounding.nearest(bar.values().get(part), PLACES);
    return PlotValue.number(rounded, Sign.MINUS_ONLY);
  }
}
