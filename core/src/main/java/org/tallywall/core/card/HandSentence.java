package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One hand of a line in words, group by group in the order of the paper. */
final class HandSentence {
  private static final String[] SIZES = {"", "single", "pair", "pung", "kong", "quint", "sextet"};
  private static final String[] COUNTS = {
    "no",
    "a",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen"
  };

  private final TermWords words;

  private HandSentence(TermWords words) {
    this.words = words;
  }

  /**
   * The hand in words.
   *
   * @param parts the hand as a row of parts, each with its options
   * @param printed the line's slide and rule for numbers
   * @return clauses separated by semicolons
   */
  static String of(List<List<List<Group>>> parts, Printed printed) {
    List<Group> all = new ArrayList<>();
    parts.forEach(options -> options.forEach(all::addAll));
    HandPattern example = new HandPattern(all);
    HandSentence sentence = new HandSentence(new TermWords(example, printed));
    List<String> clauses = sentence.clauses(parts);
    if (printed.slide() != Slide.NONE) {
      clauses.add(SlideWords.of(example.digits(), printed.slide()));
    }
    return String.join("; ", clauses);
  }

  /** A clause for each row of groups in one suit, in the order of the paper. */
  private List<String> clauses(List<List<List<Group>>> parts) {
    List<String> clauses = new ArrayList<>();
    List<Group> sure = new ArrayList<>();
    for (List<List<Group>> options : parts) {
      if (options.size() == 1) {
        sure.addAll(options.get(0));
      } else {
        clauses.addAll(places(sure));
        sure.clear();
        clauses.add(choice(options));
      }
    }
    clauses.addAll(places(sure));
    return clauses;
  }

  private String choice(List<List<Group>> options) {
    List<String> choices = new ArrayList<>();
    for (List<Group> option : options) {
      words.begin();
      choices.add(list(places(option), "and"));
    }
    words.end();
    return "one of: " + String.join(", or ", choices);
  }

  private List<String> places(List<Group> groups) {
    List<String> clauses = new ArrayList<>();
    int start = 0;
    while (start < groups.size()) {
      Term first = groups.get(start).term();
      int end = start + 1;
      while (end < groups.size() && words.together(first, groups, end)) {
        end++;
      }
      String phrases = list(phrases(groups.subList(start, end)), "and");
      String place = words.placeWords(first);
      clauses.add(place.isEmpty() ? phrases : phrases + " in " + place);
      start = end;
    }
    return clauses;
  }

  /** Equal neighbors are counted; a run of singles is one word of the paper. */
  private List<String> phrases(List<Group> groups) {
    List<String> phrases = new ArrayList<>();
    int start = 0;
    while (start < groups.size()) {
      Group group = groups.get(start);
      int end = start + 1;
      while (end < groups.size()
          && (groups.get(end).equals(group) || group.size() == 1 && groups.get(end).size() == 1)) {
        end++;
      }
      phrases.addAll(group.size() == 1 ? singles(groups.subList(start, end)) : List.of());
      if (group.size() > 1) {
        phrases.add(phrase(group, end - start));
      }
      start = end;
    }
    return phrases;
  }

  private List<String> singles(List<Group> groups) {
    Map<Group, Integer> counts = new LinkedHashMap<>();
    groups.forEach(group -> counts.merge(group, 1, Integer::sum));
    int each = counts.get(groups.get(0));
    if (counts.size() == 1 || counts.values().stream().anyMatch(count -> count != each)) {
      List<String> phrases = new ArrayList<>();
      counts.forEach((group, count) -> phrases.add(phrase(group, count)));
      return phrases;
    }
    String head = each == 1 ? "a single each of " : COUNTS[each] + " singles each of ";
    return List.of(
        head + list(counts.keySet().stream().map(g -> words.name(g.term(), 1)).toList(), "and"));
  }

  private String phrase(Group group, int count) {
    Term term = group.term();
    String head = COUNTS[count] + " " + SIZES[group.size()];
    if (group.size() == 1 && words.standsAlone(term, count)) {
      return head + " " + words.name(term, count);
    }
    head += count > 1 ? "s" : "";
    if (words.slides(term)) {
      return words.lowest(term) ? head : head + " " + words.name(term, group.size());
    }
    return head + " of " + words.name(term, 2);
  }

  /**
   * Things in a row.
   *
   * @param things at least one
   * @param last the word before the last, "and" or "or"
   * @return as in {@code one, two and three}
   */
  static String list(List<String> things, String last) {
    int end = things.size() - 1;
    return end == 0
        ? things.get(0)
        : String.join(", ", things.subList(0, end)) + " " + last + " " + things.get(end);
  }
}
