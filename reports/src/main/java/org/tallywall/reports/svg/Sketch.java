package org.tallywall.reports.svg;

import java.util.List;
import org.tallywall.reports.figure.Standing;
import org.tallywall.reports.markup.Element;

/** A few strokes: the shapes that drawings are made of. All lengths are in units of the picture. */
final class Sketch {
  /** Half the size of a mark. */
  static final double MARK = 11;

  private static final double MARK_STROKE = 4;

  private final Element into;

  Sketch(Element into) {
    this.into = into;
  }

  /** A group of shapes with words that appear under the pointer. */
  Sketch group(String words) {
    Element group = Element.of("g").add(Element.of("title", words));
    into.add(group);
    return new Sketch(group);
  }

  void line(double x1, double y1, double x2, double y2, Stroke stroke) {
    Element line = Element.of("line").with("x1", Units.of(x1)).with("y1", Units.of(y1));
    into.add(stroke.on(line.with("x2", Units.of(x2)).with("y2", Units.of(y2))));
  }

  void path(String d, Stroke stroke) {
    Element path = Element.of("path").with("d", d).with("fill", "none");
    into.add(stroke.on(path.with("stroke-linejoin", "round")));
  }

  void area(String d, Color fill) {
    into.add(Element.of("path").with("d", d).with("fill", fill.code()));
  }

  void box(Box box, String fill) {
    into.add(rect(box).with("fill", fill));
  }

  void box(Box box, String fill, Stroke stroke) {
    into.add(stroke.on(rect(box).with("fill", fill)));
  }

  /** The mark of a thing compared, or of what it is compared with. */
  void mark(double x, double y, Standing standing) {
    if (standing == Standing.BASELINE) {
      square(x, y, Color.BLUE);
    } else {
      dot(x, y, Color.BLUE);
    }
  }

  /** A filled dot. */
  void dot(double x, double y, Color color) {
    Element circle = Element.of("circle").with("cx", Units.of(x)).with("cy", Units.of(y));
    into.add(circle.with("r", Units.of(MARK)).with("fill", color.code()));
  }

  /** A hollow square. */
  void square(double x, double y, Color color) {
    Box box = new Box(x - MARK + 2, y - MARK + 2, 2 * MARK - 4, 2 * MARK - 4);
    box(box, Color.WHITE.code(), Stroke.of(color, MARK_STROKE));
  }

  /** A hollow diamond. */
  void diamond(double x, double y, Color color) {
    double r = MARK + 5;
    String d = Path.at(x, y - r).to(x + r, y).to(x, y + r).to(x - r, y).closed();
    Element path = Element.of("path").with("d", d).with("fill", Color.WHITE.code());
    into.add(Stroke.of(color, MARK_STROKE).on(path));
  }

  /** One line of text; {@code y} is its base. */
  void text(double x, double y, Anchor anchor, Face face, String words) {
    into.add(text(x, y, anchor, face).text(words));
  }

  /** A number above a mark, on white, so that no line of the field runs through it. */
  void onWhite(double x, double base, String number) {
    double width = TextWidth.of(number, Face.SMALL);
    double capital = Face.SMALL.size() * 0.72;
    box(new Box(x - width / 2, base - capital - 3, width, capital + 6), Color.WHITE.code());
    text(x, base, Anchor.MIDDLE, Face.SMALL, number);
  }

  /** Lines of text around a middle height. */
  void block(double x, double middle, Anchor anchor, Face face, List<String> lines) {
    double y = firstBase(middle, face, lines.size());
    for (String line : lines) {
      text(x, y, anchor, face, line);
      y += face.lineHeight();
    }
  }

  /** The base of the first of some lines, so that their letters stand around a middle height. */
  static double firstBase(double middle, Face face, int lines) {
    double capital = face.size() * 0.72;
    return middle + capital / 2 - (lines - 1) * face.lineHeight() / 2;
  }

  private static Element text(double x, double y, Anchor anchor, Face face) {
    Element text = Element.of("text").with("x", Units.of(x)).with("y", Units.of(y));
    text.with("font-size", Units.of(face.size())).with("fill", face.color().code());
    if (face.bold()) {
      text.with("font-weight", "bold");
    }
    return anchor == Anchor.START ? text : text.with("text-anchor", anchor.code());
  }

  private static Element rect(Box box) {
    Element rect = Element.of("rect").with("x", Units.of(box.x())).with("y", Units.of(box.y()));
    return rect.with("width", Units.of(box.width())).with("height", Units.of(box.height()));
  }
}
