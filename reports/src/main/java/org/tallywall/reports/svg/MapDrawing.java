package org.tallywall.reports.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.figure.SquareMap;
import org.tallywall.reports.figure.SquareMap.Square;

/** Draws a field of squares, with the border through it. */
final class MapDrawing {
  private static final double MOST_WIDTH = 240;
  private static final double HEIGHT = 92;

  /** The height of rows where a range takes two lines. */
  private static final double TALL = 124;

  private static final double PLAQUE = 10;
  private static final double OVERHANG = 6;
  private static final double LABELS = 300;
  private static final double NARROW_LABELS = 90;
  private static final String TOO_FEW = "too few";

  /** Stands for {@link #TOO_FEW} in squares that are too narrow for words. */
  private static final String DASH = "\u2013";

  private static final Stroke FRAME = Stroke.of(Color.LINE, 2);
  private static final Stroke BORDER = Stroke.of(Color.INK, 9);

  private final SquareMap map;
  private final Sheet sheet;
  private final Sketch sketch;
  private double height = HEIGHT;

  MapDrawing(SquareMap map, Sheet sheet) {
    this.map = map;
    this.sheet = sheet;
    this.sketch = sheet.sketch();
  }

  void draw() {
    sheet.paragraph(Face.STRONG, map.measure().words());
    sheet.use(6);
    sheet.legend(keys());
    RowLabels labels =
        RowLabels.beside(map.down().labels(), sheet.isNarrow() ? NARROW_LABELS : LABELS);
    double left =
        sheet.isNarrow()
            ? labels.right()
            : Math.max(labels.right(), Sheet.MARGIN + headingWidth() + RowLabels.GAP);
    double width = Math.min(MOST_WIDTH, (sheet.right() - left - 10) / map.across().labels().size());
    headings(left, width);
    height = height(width);
    double top = sheet.used();
    for (int row = 0; row < map.squares().size(); row++) {
      double y = top + row * height;
      double middle = y + height / 2;
      sketch.block(left - 20, middle, Anchor.END, Face.PLAIN, labels.lines().get(row));
      for (int column = 0; column < map.across().labels().size(); column++) {
        square(row, column, new Box(left + column * width, y, width, height));
      }
    }
    map.border().ifPresent(line -> border(line, left, top, width));
    sheet.use(map.squares().size() * height + 8);
  }

  /** Higher where ranges take several lines. */
  private double height(double width) {
    int lines =
        map.squares().stream()
            .flatMap(List::stream)
            .filter(square -> sign(square) != 0)
            .mapToInt(square -> range(square, width).size())
            .max()
            .orElse(0);
    return lines < 2 ? HEIGHT : TALL + (lines - 2) * Face.SMALL.lineHeight();
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
      keys.add(new Key("too close to call", (s, x, y) -> s.box(swatch(x, y), fill(0), FRAME)));
    }
    if (sheet.isNarrow() && any(square -> square.estimate().isEmpty())) {
      String shade = Color.SHADE.code();
      keys.add(new Key("too few games", (s, x, y) -> s.box(swatch(x, y), shade, FRAME)));
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
    return square.sign();
  }

  private String fill(int sign) {
    if (sign == 0) {
      return Color.WHITE.code();
    }
    return sign > 0 ? Color.BAND.code() : sheet.fill(Pattern.LESS);
  }

  private void headings(double left, double width) {
    Headings names = new Headings();
    String across = map.across().axis().words();
    if (sheet.isNarrow()) {
      String both = "Across: " + across + ". Down: " + map.down().axis().words() + ".";
      sheet.paragraph(Face.PLAIN, both);
    } else {
      names.add(left, Anchor.START, across, sheet.right() - left);
      names.draw(sheet);
    }
    Headings labels = new Headings();
    if (!sheet.isNarrow()) {
      labels.add(left - 20, Anchor.END, map.down().axis().words(), left - 20 - Sheet.MARGIN);
    }
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
    group.box(box, square.estimate().isEmpty() ? Color.SHADE.code() : fill(sign(square)), FRAME);
    if (square.estimate().isEmpty()) {
      String few = fits(TOO_FEW, box.width()) ? TOO_FEW : DASH;
      group.block(box.center(), box.middle(), Anchor.MIDDLE, Face.FAINT, List.of(few));
    } else if (sign(square) != 0) {
      numbers(group, box, square);
    }
  }

  /** The range of a square in one line, or in two where one is too long, or in none. */
  private List<String> range(Square square, double width) {
    String range = square.estimate().map(e -> e.rangeText(Sign.PLUS_AND_MINUS)).orElse("");
    if (fits(range, width)) {
      return List.of(range);
    }
    int cut = range.indexOf(" to ") + 3;
    List<String> two = List.of(range.substring(0, cut), range.substring(cut + 1));
    List<String> three = List.of(range.substring(0, cut - 3), "to", range.substring(cut + 1));
    return Stream.of(two, three)
        .filter(lines -> lines.stream().allMatch(line -> fits(line, width)))
        .findFirst()
        .orElse(List.of());
  }

  private boolean fits(String text, double width) {
    double around = sheet.isNarrow() ? PLAQUE / 2 : 2 * PLAQUE;
    return TextWidth.of(text, Face.SMALL) + around <= width;
  }

  /** The difference and its range below. */
  private void numbers(Sketch group, Box box, Square square) {
    PlotValue estimate = square.estimate().orElseThrow();
    String whole = estimate.valueText(Sign.PLUS_AND_MINUS);
    boolean room = TextWidth.of(whole, Face.SMALL) <= box.width();
    String value = room ? whole : sign(square) > 0 ? "+" : "\u2212";
    List<String> range = room ? range(square, box.width()) : List.of();
    Face face = TextWidth.of(value, Face.STRONG) <= box.width() ? Face.STRONG : Face.SMALL;
    double high = Face.STRONG.lineHeight() + range.size() * Face.SMALL.lineHeight();
    if (sign(square) < 0) {
      double wide = Math.max(TextWidth.of(value, face), Sheet.widest(range, Face.SMALL));
      double left = box.center() - wide / 2 - PLAQUE;
      double top = box.middle() - high / 2 - 1;
      group.box(new Box(left, top, wide + 2 * PLAQUE, high + 2), Color.WHITE.code());
    }
    double top = box.middle() - high / 2;
    double x = box.center();
    group.block(x, top + Face.STRONG.lineHeight() / 2, Anchor.MIDDLE, face, List.of(value));
    if (!range.isEmpty()) {
      double middle = top + (high + Face.STRONG.lineHeight()) / 2;
      group.block(x, middle, Anchor.MIDDLE, Face.SMALL, range);
    }
  }

  /** The line, in as many pieces as rows without a part in it make of it. */
  private void border(SquareMap.Border line, double left, double top, double width) {
    List<Integer> places = line.columnsBefore();
    List<Path> pieces = new ArrayList<>();
    int row = 0;
    while (row < places.size()) {
      int from = row;
      while (row < places.size() && places.get(row) != SquareMap.Border.NO_LINE) {
        row++;
      }
      if (row > from) {
        List<Double> xs =
            places.subList(from, row).stream().map(place -> left + place * width).toList();
        pieces.add(piece(xs, top + from * height, from == 0, row == places.size()));
      } else {
        row++;
      }
    }
    pieces.forEach(piece -> sketch.path(piece.open(), Stroke.of(Color.WHITE, 15)));
    pieces.forEach(piece -> sketch.path(piece.open(), BORDER));
  }

  /** A piece through rows that follow each other; it sticks out of the field above and below. */
  private Path piece(List<Double> xs, double top, boolean atTop, boolean atBottom) {
    double x = xs.get(0);
    Path path = Path.at(x, top - (atTop ? OVERHANG : 0));
    for (int row = 0; row < xs.size(); row++) {
      path.to(x, top + row * height).to(xs.get(row), top + row * height);
      x = xs.get(row);
    }
    return path.to(x, top + xs.size() * height + (atBottom ? OVERHANG : 0));
  }
}
