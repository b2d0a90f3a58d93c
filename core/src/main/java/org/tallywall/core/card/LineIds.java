package org.tallywall.core.card;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Place;

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
                  "the id \"%s\" stands already in line %d; write another",
                  line.id,
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
        for (char letter = 'a'; taken.containsKey(unique); letter++) {
          unique = id + letter;
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
      String letters = family.replaceAll("[^\\p{L}\\p{N}]", "");
      letters = letters.isEmpty() ? "X" : letters;
      letters = letters.substring(0, 1).toUpperCase(Locale.ROOT) + letters.substring(1);
      int length = 1;
      while (length < letters.length() && taken.contains(letters.substring(0, length))) {
        length++;
      }
      String prefix = letters.substring(0, length);
      for (char more = 'a'; taken.contains(prefix); more++) {
        prefix = letters + more;
      }
      taken.add(prefix);
      prefixes.put(family, prefix);
    }
    return prefixes;
  }
}
