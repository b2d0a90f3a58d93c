package org.tallywall.reports.text;

import java.util.ArrayList;
import java.util.List;

/** Text cut into lines. A letter counts as one column, also the few that consoles draw wider. */
public final class Wrap {
  /** A space, but not the one between a number and its percent sign. */
  private static final String BREAK = " (?!%)";

  private Wrap() {}

  static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  static int longestWord(String text) {
    int longest = 0;
    for (String word : text.split(BREAK)) {
      longest = Math.max(longest, length(word));
    }
    return longest;
  }

  /**
   * Breaks at spaces, and within a word only where it is longer than a line.
   *
   * @param text one line without blanks at its ends
   * @param width the most letters in a line, at least 1
   * @return at least one line
   */
  public static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(BREAK)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (length(longer) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (length(line) > width) {
        int cut = line.offsetByCodePoints(0, width);
        lines.add(line.substring(0, cut));
        line = line.substring(cut);
      }
    }
    lines.add(line);
    return lines;
  }
}
