package org.tallywall.reports.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.tallywall.reports.table.Visible;

/** Text cut into lines that fit a width. */
final class Lines {
  private static final Pattern BLANKS = Pattern.compile("[\\p{Z}\\t\\n\\r]+");

  private static final int MOST_LETTERS = 2_000;

  private Lines() {}

  /** Breaks at spaces, and within a word only where it is wider than a line. At least one line. */
  static List<String> wrap(String text, double width, Face face) {
    List<String> lines = new ArrayList<>();
    String line = "";
    String seen = BLANKS.matcher(Visible.text(shortened(text))).replaceAll(" ").strip();
    for (String word : seen.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (TextWidth.of(longer, face) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (TextWidth.of(line, face) > width && line.codePointCount(0, line.length()) > 1) {
        int cut = fitting(line, width, face);
        lines.add(line.substring(0, cut));
        line = line.substring(cut);
      }
    }
    lines.add(line);
    return lines;
  }

  /** A picture has no room for a text without end. */
  private static String shortened(String text) {
    return text.length() <= MOST_LETTERS
        ? text
        : text.substring(0, text.offsetByCodePoints(0, MOST_LETTERS / 2)) + "\u2026";
  }

  /** How many letters from the start fit; at least one. */
  private static int fitting(String word, double width, Face face) {
    int cut = word.offsetByCodePoints(0, 1);
    while (cut < word.length()) {
      int next = word.offsetByCodePoints(cut, 1);
      if (TextWidth.of(word.substring(0, next), face) > width) {
        return cut;
      }
      cut = next;
    }
    return cut;
  }
}
