package org.tallywall.reports.svg;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.markup.Element;
import org.tallywall.reports.markup.MarkupNode;

/** Where a text of a picture stands, by the widths that the drawing itself reckons with. */
record TextBox(String words, double left, double right, double top, double bottom) {

  static List<TextBox> of(Element picture) {
    List<TextBox> boxes = new ArrayList<>();
    collect(picture, boxes);
    return boxes;
  }

  private static void collect(Element element, List<TextBox> boxes) {
    if (element.name().equals("text")) {
      boxes.add(box(element));
    }
    for (MarkupNode child : element.children()) {
      if (child instanceof Element inner) {
        collect(inner, boxes);
      }
    }
  }

  private static TextBox box(Element text) {
    String words = ((MarkupNode.Words) text.children().get(0)).text();
    double x = number(text, "x");
    double y = number(text, "y");
    double size = number(text, "font-size");
    boolean bold = text.attributes().containsKey("font-weight");
    Face face = bold ? Face.STRONG : Face.SMALL;
    double width = TextWidth.of(words, face) / face.size() * size;
    String anchor = text.attributes().getOrDefault("text-anchor", "start");
    double left = anchor.equals("start") ? x : anchor.equals("end") ? x - width : x - width / 2;
    return new TextBox(words, left, left + width, y - size * 0.72, y);
  }

  boolean covers(TextBox other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  private static double number(Element text, String name) {
    return Double.parseDouble(text.attributes().get(name));
  }
}
