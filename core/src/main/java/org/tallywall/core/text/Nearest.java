package org.tallywall.core.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;

/** Finds the known word that a mistyped one most likely means. */
public final class Nearest {
  /** Letters that are compared; what is longer is no known word, but has a nearest one too. */
  private static final int LONGEST = 100;

  private Nearest() {}

  /**
   * The known word with the fewest changed letters (Levenshtein 1966), the first of equals.
   *
   * @param word what was typed
   * @param known the words that would be right; not empty
   * @return one of them
   */
  public static String of(String word, Collection<String> known) {
    String typed = fold(word);
    return known.stream()
        .min(Comparator.comparingInt(other -> distance(typed, fold(other))))
        .orElseThrow();
  }

  private static String fold(String word) {
    int end = Math.min(word.length(), LONGEST);
    return word.substring(0, end).toLowerCase(Locale.ROOT);
  }

  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
