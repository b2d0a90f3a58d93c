package org.tallywall.core.card;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Place;
import org.tallywall.core.text.Shown;

/**
 * Gives each line without an id one: the first letters of its family, as few as tell it from the
 * families before, and its number within the family.
 */
final class LineIds {
  private LineIds() {}

  /**
   * Fills in the ids that were not typed and notes those typed twice.
   *
   * @param draft the card as typed
   * @param faults takes the faults
   */
  static void fill(CardDraft draft, Faults faults) {
    Map<String, Place> taken = new HashMap<>();
    for (LineDraft line : draft.lines()) {
      if (!line.id.isEmpty()) {
        Place other = taken.putIfAbsent(line.id, line.idPlace);
        if (other != null) {
          faults.fault(
              line.idPlace,
              line.id,
              String.format(
                  Locale.ROOT,
                  "the id \"%s\" is used in line %d already; write another",
                  Shown.word(line.id),
                  other.line()));
        }
      }
    }
    Map<String, String> prefixes = prefixes(draft);
    Map<String, Integer> numbers = new HashMap<>();
    for (LineDraft line : draft.lines()) {
      int number = numbers.merge(line.family, 1, Integer::sum);
      if (line.id.isEmpty()) {
        String id = prefixes.get(line.family) + number;
        String unique = id;
        for (int more = 0; taken.containsKey(unique); more++) {
          unique = id + letters(more);
        }
        line.id = unique;
        taken.put(unique, line.place);
      }
    }
  }

  private static Map<String, String> prefixes(CardDraft draft) {
    Map<String, String> prefixes = new HashMap<>();
    Set<String> taken = new HashSet<>();
    for (String family : draft.families()) {
      int[] letters = letters(family);
      int length = 1;
      while (length < letters.length && taken.contains(first(letters, length))) {
        length++;
      }
      String prefix = first(letters, length);
      for (int more = 0; taken.contains(prefix); more++) {
        prefix = first(letters, length) + letters(more);
      }
      taken.add(prefix);
      prefixes.put(family, prefix);
    }
    return prefixes;
  }

  /** The letters and digits of a name, each whole, the first one large; X where it has none. */
  private static int[] letters(String family) {
    String letters = family.replaceAll("[^\\p{L}\\p{N}]", "");
    letters = letters.isEmpty() ? "X" : letters;
    int first = letters.offsetByCodePoints(0, 1);
    return (letters.substring(0, first).toUpperCase(Locale.ROOT) + letters.substring(first))
        .codePoints()
        .toArray();
  }

  private static String first(int[] letters, int length) {
    return new String(letters, 0, length);
  }

  /** The names a, b … z, aa, ab … in their order, from 0. */
  private static String letters(int number) {
    String last = String.valueOf((char) ('a' + number % 26));
    return number < 26 ? last : letters(number / 26 - 1) + last;
  }
}
