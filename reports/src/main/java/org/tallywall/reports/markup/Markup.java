package org.tallywall.reports.markup;

import java.util.Set;
import java.util.function.Predicate;
import org.tallywall.reports.table.Visible;

/**
 * Writes elements. Those that hold only blocks and shapes put each on a line of its own; those that
 * hold text or phrases stay on one line, so that no blank is added to what is read.
 *
 * <p>Escaped are {@code &}, {@code <}, {@code >} and, in attributes, the quotation mark and line
 * breaks. Characters that XML 1.0 (fifth edition, section 2.2) forbids, and whatever else nobody
 * sees, are written as {@link Visible} says.
 */
public final class Markup {
  /** Elements of HTML that have no end tag (HTML Living Standard, 13.1.2: void elements). */
  private static final Set<String> VOID =
      Set.of("br", "col", "hr", "img", "input", "link", "meta", "wbr");

  /** Elements that stand in a line of text. */
  private static final Set<String> PHRASES = Set.of("a", "b", "img", "sup", "span");

  private final boolean html;
  private final StringBuilder out = new StringBuilder();

  private Markup(boolean html) {
    this.html = html;
  }

  /**
   * Writes an element as XML, as files of pictures are.
   *
   * @param element the element
   * @return lines, each ended by {@code \n}
   */
  public static String xml(Element element) {
    return new Markup(false).written(element);
  }

  /**
   * Writes an element as HTML; drawings (SVG) may stand within.
   *
   * @param element the element
   * @return lines, each ended by {@code \n}
   */
  public static String html(Element element) {
    return new Markup(true).written(element);
  }

  private String written(Element element) {
    element(element);
    return out.append('\n').toString();
  }

  private void element(Element element) {
    out.append('<').append(element.name());
    element.attributes().forEach(this::attribute);
    if (element.children().isEmpty() && !html) {
      out.append("/>");
      return;
    }
    out.append('>');
    if (html && VOID.contains(element.name())) {
      return;
    }
    boolean lines = element.children().stream().allMatch(Markup::standsAlone);
    for (MarkupNode child : element.children()) {
      out.append(lines ? "\n" : "");
      child(child);
    }
    out.append(lines && !element.children().isEmpty() ? "\n" : "");
    out.append("</").append(element.name()).append('>');
  }

  private static boolean standsAlone(MarkupNode node) {
    return node instanceof Element element && !PHRASES.contains(element.name());
  }

  private void child(MarkupNode child) {
    if (child instanceof Element element) {
      element(element);
    } else if (child instanceof MarkupNode.Words words) {
      escape(words.text(), c -> false);
    } else if (child instanceof MarkupNode.Verbatim verbatim) {
      out.append(verbatim.text());
    }
  }

  private void attribute(String name, String value) {
    out.append(' ').append(name).append("=\"");
    escape(value, c -> c == '"' || c == '\n' || c == '\r' || c == '\t');
    out.append('"');
  }

  private void escape(String text, Predicate<Integer> also) {
    Visible.text(text).codePoints().forEach(c -> one(c, also.test(c)));
  }

  private void one(int letter, boolean escape) {
    switch (letter) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      default -> {
        if (escape || letter == '\r') {
          out.append("&#").append(letter).append(';');
        } else {
          out.appendCodePoint(letter);
        }
      }
    }
  }
}
