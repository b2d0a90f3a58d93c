package org.tallywall.core.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds the known word that a mistyped one most likely means, and says so. A word that is like none
 * of them gets no guess: a far one only leads astray.
 */
public final class Nearest {
  /** Letters that are compared; what is longer is no known word. */
  private static final int LONGEST = 100;

  /** A second slip is forgiven from this many letters on, and a third. */
  private static final int TWO_SLIPS_FROM = 4;

  private static final int THREE_SLIPS_FROM = 9;

  /** Fewer letters than these begin too many words. */
  private static final int SHORTEST_BEGINNING = 3;

  private Nearest() {}

  /**
   * The known word that was most likely meant: one that says the same ({@link Synonyms}), else the
   * one with the fewest slips (a letter more, less, changed, or two exchanged: Damerau 1964) if
   * there are few, else the one word that begins or ends with what was typed. Capitals make no
   * difference.
   *
   * @param word what was typed
   * @param known the words that would be right
   * @return one of them, the first of equals, or nothing where none is near
   */
  public static Optional<String> of(String word, Collection<String> known) {
    String typed = fold(word);
    Optional<String> same = Synonyms.of(typed, known);
    if (same.isPresent()) {
      return same;
    }
    Optional<String> near =
        known.stream()
            .filter(other -> slips(typed, fold(other)) <= forgiven(typed, fold(other)))
            .min(Comparator.comparingInt(other -> slips(typed, fold(other))));
    return near.or(() -> part(typed, known));
  }

  /**
   * What to write in place of a word that is not known, to follow what is wrong.
   *
   * @param word what was typed
   * @param known the words that would be right
   * @return as in {@code ; did you mean "seat"?}, or empty where none is near
   */
  public static String hint(String word, Collection<String> known) {
    return of(word, known).map(near -> "; did you mean \"" + near + "\"?").orElse("");
  }

  /**
   * What to write in place of a word that is not known, with all that could be written.
   *
   * @param word what was typed
   * @param known the words that would be right
   * @return as in {@code ; did you mean "seat"? (known: seat, rack)}
   */
  public static String advice(String word, Collection<String> known) {
    return hint(word, known) + " (known: " + String.join(", ", known) + ")";
  }

  private static int forgiven(String typed, String other) {
    int letters = Math.min(typed.length(), other.length());
    if (letters < TWO_SLIPS_FROM) {
      return 1;
    }
    return letters < THREE_SLIPS_FROM ? 2 : 3;
  }

  /**
   * The one word of which the typed one is the beginning, or a whole part behind a dot or blank.
   */
  private static Optional<String> part(String typed, Collection<String> known) {
    if (typed.length() < SHORTEST_BEGINNING) {
      return Optional.empty();
    }
    List<String> holding =
        known.stream()
            .filter(
                other ->
                    fold(other).startsWith(typed)
                        || fold(other).endsWith("." + typed)
                        || fold(other).endsWith(" " + typed))
            .toList();
    return holding.size() == 1 ? Optional.of(holding.get(0)) : Optional.empty();
  }

  private static String fold(String word) {
    int end = Math.min(word.length(), LONGEST);
    return word.substring(0, end).toLowerCase(Locale.ROOT);
  }

  /** Letters added, left out or changed, and neighbors exchanged, each at most once (Damerau). */
  private static int slips(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        boolean equal = a.charAt(i - 1) == b.charAt(j - 1);
        row[j] = Math.min(last[j - 1] + (equal ? 0 : 1), Math.min(last[j], row[j - 1]) + 1);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], before[j - 2] + 1);
        }
      }
      int[] free = before;
      before = last;
      last = row;
      row = free;
    }
    return last[b.length()];
  }
}
