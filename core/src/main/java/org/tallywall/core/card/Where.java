package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.tile.NotationException;

/**
 * Which numbers the letters n, m and k of a line may take together, as in {@code nm: 19 28 37}.
 *
 * @param letters letters of {@code nmk}, each at most once; empty where nothing is laid down
 * @param figures the numbers, 1 to 9 each, one row for each choice, in the order of the letters
 */
public record Where(String letters, List<List<Integer>> figures) {
  /** No rule: each letter takes 1 to 9 by itself. */
  public static final Where FREE = new Where("", List.of());

  /**
   * A rule.
   *
   * @param letters letters of {@code nmk}
   * @param figures the numbers in the order of the letters
   */
  public Where {
    figures = List.copyOf(figures);
  }

  /**
   * Reads a rule.
   *
   * @param text letters, a colon, then the figures; blank for none
   * @return the rule
   * @throws NotationException if the text is no such rule
   */
  static Where read(String text) {
    if (text.isBlank()) {
      return FREE;
    }
    int colon = text.indexOf(':');
    String letters = colon < 0 ? "" : text.substring(0, colon).strip();
    boolean good = !letters.isEmpty() && letters.chars().distinct().count() == letters.length();
    for (char letter : letters.toCharArray()) {
      good &= Term.NUMBER_LETTERS.indexOf(letter) >= 0;
    }
    if (!good) {
      throw new NotationException(
          1, text, "write letters of n, m, k, a colon, then the figures, as in nm: 19 28 37");
    }
    List<List<Integer>> figures = new ArrayList<>();
    int from = colon + 1;
    for (String word : text.substring(colon + 1).strip().split("[\\s,]+")) {
      int at = text.indexOf(word, from);
      figures.add(figures(word, letters, at + 1));
      from = at + word.length();
    }
    return new Where(letters, figures);
  }

  private static List<Integer> figures(String word, String letters, int position) {
    List<Integer> row = new ArrayList<>();
    for (char digit : word.toCharArray()) {
      if (digit < '1' || digit > '9') {
        throw new NotationException(
            position, word, "figures are numbers from 1 to 9, as in nm: 19 28 37");
      }
      row.add(digit - '0');
    }
    if (row.size() != letters.length()) {
      throw new NotationException(
          position,
          word,
          String.format(
              Locale.ROOT,
              "\"%s\" needs %d figures in each choice, not %d",
              letters,
              letters.length(),
              row.size()));
    }
    return row;
  }

  /** The rule as it is typed, figures separated by single spaces; empty where there is none. */
  @Override
  public String toString() {
    if (letters.isEmpty()) {
      return "";
    }
    StringBuilder text = new StringBuilder(letters).append(':');
    for (List<Integer> row : figures) {
      text.append(' ');
      row.forEach(text::append);
    }
    return text.toString();
  }
}
