package org.tallywall.reports.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.tallywall.reports.figure.Estimate;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.figure.SquareMap;
import org.tallywall.reports.figure.SquareMap.Square;

/** Draws a field of squares, with the border through it. */
final class MapDrawing {
  private static final double MOST_WIDTH = 240;
  private static final double HEIGHT = 92;
  private static final double PLAQUE = 10;
  private static final double LABELS = 300;
  private static final String TOO_FEW = "too few";
  private static final Stroke FRAME = Stroke.of(Colour.LINE, 2);
  private static final Stroke BORDER = Stroke.of(Colour.INK, 9);

  private final SquareMap map;
  private final Sheet sheet;
  private final Sketch sketch;

  MapDrawing(SquareMap map, Sheet sheet) {
    this.map = map;
    this.sheet = sheet;
    this.sketch = sheet.sketch();
  }

  void draw() {
    sheet.paragraph(Face.STRONG, map.measure().words());
    sheet.use(6);
    sheet.legend(keys());
    RowLabels labels = RowLabels.of(map.down().labels(), LABELS);
    double left = Math.max(labels.right(), Sheet.MARGIN + headingWidth() + RowLabels.GAP);
    double width = Math.min(MOST_WIDTH, (Sheet.RIGHT - left - 10) / map.across().labels().size());
    headings(left, width);
    double top = sheet.used();
    for (int row = 0; row < map.squares().size(); row++) {
      double y = top + row * HEIGHT;
      double middle = y + HEIGHT / 2;
      sketch.block(left - 20, middle, Anchor.END, Face.PLAIN, labels.lines().get(row));
      for (int column = 0; column < map.across().labels().size(); column++) {
        square(row, column, new Box(left + column * width, y, width, HEIGHT));
      }
    }
    map.border().ifPresent(line -> border(line, left, top, width));
    sheet.use(map.squares().size() * HEIGHT + 8);
  }

  private double headingWidth() {
    return Sheet.widest(Lines.wrap(map.down().axis().words(), LABELS, Face.STRONG), Face.STRONG);
  }

  private List<Key> keys() {
    List<Key> keys = new ArrayList<>();
    map.border().ifPresent(line -> keys.add(new Key(line.words(), MapDrawing::borderMark)));
    if (any(square -> sign(square) > 0)) {
      keys.add(new Key("clearly more", (s, x, y) -> s.box(swatch(x, y), fill(1), FRAME)));
    }
    if (any(square -> sign(square) < 0)) {
      keys.add(new Key("clearly less", (s, x, y) -> s.box(swatch(x, y), fill(-1), FRAME)));
    }
    if (any(square -> square.estimate().isPresent() && sign(square) == 0)) {
      keys.add(new Key("cannot be told", (s, x, y) -> s.box(swatch(x, y), fill(0), FRAME)));
    }
    return keys;
  }

  private static void borderMark(Sketch sketch, double x, double y) {
    sketch.line(x - Key.MARK_AT, y, x + Key.MARK_AT, y, BORDER);
  }

  private static Box swatch(double x, double y) {
    return new Box(x - Key.MARK_AT, y - 14, 2 * Key.MARK_AT, 28);
  }

  private boolean any(Predicate<Square> condition) {
    return map.squares().stream().flatMap(List::stream).anyMatch(condition);
  }

  private static int sign(Square square) {
    return square.estimate().map(Estimate::clearSign).orElse(0);
  }

  private String fill(int sign) {
    if (sign == 0) {
      return Colour.WHITE.code();
    }
    return sign > 0 ? Colour.BAND.code() : sheet.fill(Pattern.LESS);
  }

  private void headings(double left, double width) {
    Headings names = new Headings();
    names.add(left, Anchor.START, map.across().axis().words(), Sheet.RIGHT - left);
    names.draw(sheet);
    Headings labels = new Headings();
    labels.add(left - 20, Anchor.END, map.down().axis().words(), left - 20 - Sheet.MARGIN);
    for (int column = 0; column < map.across().labels().size(); column++) {
      double x = left + (column + 0.5) * width;
      labels.add(x, Anchor.MIDDLE, map.across().labels().get(column), width - PLAQUE);
    }
    labels.draw(sheet);
  }

  private void square(int row, int column, Box box) {
    Square square = map.squares().get(row).get(column);
    String words = square.estimate().map(e -> e.text(Sign.PLUS_AND_MINUS)).orElse(TOO_FEW);
    String where = map.down().labels().get(row) + ", " + map.across().labels().get(column);
    Sketch group = sketch.group(where + ": " + words);
    group.box(box, square.estimate().isEmpty() ? Colour.SHADE.code() : fill(sign(square)), FRAME);
    if (square.estimate().isEmpty()) {
      group.block(box.centre(), box.middle(), Anchor.MIDDLE, Face.FAINT, List.of(TOO_FEW));
    } else if (sign(square) != 0) {
      numbers(group, box, square.estimate().get());
    }
  }

  /** The difference and, where there is room, its range. */
  private void numbers(Sketch group, Box box, Estimate estimate) {
    String value = estimate.valueText(Sign.PLUS_AND_MINUS);
    String range = estimate.rangeText(Sign.PLUS_AND_MINUS);
    boolean room = TextWidth.of(range, Face.SMALL) + 2 * PLAQUE <= box.width();
    double width = TextWidth.of(value, Face.STRONG);
    width = 2 * PLAQUE + (room ? Math.max(width, TextWidth.of(range, Face.SMALL)) : width);
    double height = (room ? 2 : 1) * Face.STRONG.lineHeight() + 2;
    if (estimate.clearSign() < 0) {
      Box plaque = new Box(box.centre() - width / 2, box.middle() - height / 2, width, height);
      group.box(plaque, Colour.WHITE.code());
    }
    double half = room ? Face.STRONG.lineHeight() / 2 : 0;
    double x = box.centre();
    group.block(x, box.middle() - half, Anchor.MIDDLE, Face.STRONG, List.of(value));
    if (room) {
      group.block(x, box.middle() + half, Anchor.MIDDLE, Face.SMALL, List.of(range));
    }
  }

  private void border(SquareMap.Border line, double left, double top, double width) {
    double x = left + line.columnsBefore().get(0) * width;
    Path path = Path.at(x, top - 6);
    for (int row = 0; row < line.columnsBefore().size(); row++) {
      double next = left + line.columnsBefore().get(row) * width;
      path.to(x, top + row * HEIGHT).to(next, top + row * HEIGHT);
      x = next;
    }
    path.to(x, top + line.columnsBefore().size() * HEIGHT + 6);
    sketch.path(path.open(), Stroke.of(Colour.WHITE, 15));
    sketch.path(path.open(), BORDER);
  }
}
