package org.tallywall.reports.svg;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.markup.Element;

/**
 * A white sheet that grows downward: the title at the top, the drawing, notes at the bottom. It
 * knows how far down it is used.
 */
final class Sheet {
  static final double MARGIN = 40;
  private static final double AFTER_TITLE = 14;
  private static final double BEFORE_NOTES = 16;
  private static final double LEGEND_ROW = 40;
  private static final double AFTER_LEGEND = 16;

  private final Caption caption;
  private final Format format;
  private final String ids;
  private final Element definitions = Element.of("defs");
  private final Element drawing = Element.of("g");
  private final Sketch sketch = new Sketch(drawing);
  private double used = MARGIN;

  /**
   * Starts a sheet with its title.
   *
   * @param caption what stands around the drawing
   * @param ids how the identifiers in it begin
   * @param format where it is to be seen
   */
  Sheet(Caption caption, String ids, Format format) {
    this.caption = caption;
    this.format = format;
    this.ids = ids;
    drawing.with("font-family", "sans-serif");
    if (!caption.slide().mark().isEmpty()) {
      paragraph(Face.MARK, caption.slide().mark());
    }
    paragraph(Face.TITLE, caption.title());
    if (format.isAlone() && asksMore()) {
      paragraph(Face.PLAIN, caption.slide().question());
    }
    used += AFTER_TITLE;
  }

  /** Whether there is a question that is not the title already. */
  private boolean asksMore() {
    String question = caption.slide().question();
    return !question.isEmpty() && !question.equals(caption.title());
  }

  /** Where the right margin begins. */
  double right() {
    return format.width() - MARGIN;
  }

  /** The room between the margins. */
  double width() {
    return format.width() - 2 * MARGIN;
  }

  /** The left edge of what is seen. */
  double leftEdge() {
    return format.cut();
  }

  /** The right edge of what is seen. */
  double rightEdge() {
    return format.width() - format.cut();
  }

  /** Whether it is so narrow that things stand below each other that else stand side by side. */
  boolean isNarrow() {
    return format == Format.NARROW;
  }

  Sketch sketch() {
    return sketch;
  }

  /** How far down the sheet is used. */
  double used() {
    return used;
  }

  void use(double height) {
    used += height;
  }

  /** Takes a pattern for use and gives the value of {@code fill}. */
  String fill(Pattern pattern) {
    String fill = pattern.fill(ids);
    boolean there =
        definitions.children().stream()
            .anyMatch(n -> n instanceof Element e && fill.contains(e.attributes().get("id") + ")"));
    if (pattern.isDrawn() && !there) {
      definitions.add(pattern.definition(ids));
    }
    return fill;
  }

  /** Text over the whole width, in as many lines as it needs. */
  void paragraph(Face face, String text) {
    for (String line : Lines.wrap(text, width(), face)) {
      used += face.lineHeight();
      double base = used - face.lineHeight() * 0.25;
      sketch.text(MARGIN, base, Anchor.START, face, line);
    }
  }

  /** The picture with its notes; the sheet is used up. */
  Element finished() {
    List<String> notes = new ArrayList<>(caption.notes());
    if (format.isAlone()) {
      notes.addAll(caption.slide().source());
    }
    if (!notes.isEmpty()) {
      used += BEFORE_NOTES;
      notes.forEach(note -> paragraph(Face.FAINT, note));
    }
    used += MARGIN * 0.75;
    String title = ids + "-title";
    String description = ids + "-description";
    String height = Units.of(Math.ceil(used));
    Element svg = Element.of("svg").with("xmlns", "http://www.w3.org/2000/svg");
    String left = Units.of(format.cut());
    String wide = Units.of(format.width() - 2 * format.cut());
    svg.with("width", wide).with("height", height);
    svg.with("viewBox", left + " 0 " + wide + " " + height).with("role", "img");
    svg.with("aria-labelledby", title + " " + description);
    svg.add(Element.of("title", caption.title()).with("id", title));
    svg.add(Element.of("desc", caption.description()).with("id", description));
    if (!definitions.children().isEmpty()) {
      svg.add(definitions);
    }
    Element ground = Element.of("rect").with("width", "100%").with("height", "100%");
    if (format.cut() > 0) {
      ground.with("x", left);
    }
    svg.add(ground.with("fill", Color.WHITE.code()));
    return svg.add(drawing);
  }

  /** A row of keys to marks or fillings, with words, wrapped at the right side. */
  void legend(List<Key> keys) {
    double x = MARGIN;
    double row = 0;
    for (Key key : keys) {
      List<String> lines = Lines.wrap(key.words(), width() - Key.WIDTH, Face.SMALL);
      double width = Key.WIDTH + widest(lines, Face.SMALL);
      if (x > MARGIN && x + width > right()) {
        x = MARGIN;
        used += row;
        row = 0;
      }
      double height = (lines.size() - 1) * Face.SMALL.lineHeight() + LEGEND_ROW;
      key.mark().draw(sketch, x + Key.MARK_AT, used + LEGEND_ROW / 2);
      sketch.block(x + Key.WIDTH, used + height / 2, Anchor.START, Face.SMALL, lines);
      row = Math.max(row, height);
      x += width + Key.GAP;
    }
    used += row + (keys.isEmpty() ? 0 : AFTER_LEGEND);
  }

  /** The width of the widest of some texts. */
  static double widest(List<String> texts, Face face) {
    return texts.stream().mapToDouble(text -> TextWidth.of(text, face)).max().orElse(0);
  }
}
