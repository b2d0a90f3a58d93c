package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One hand of a line in words: its groups by suit, then what may stand for one another. */
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

  private List<String> clauses(List<List<List<Group>>> parts) {
    List<Group> sure = new ArrayList<>();
    parts.stream().filter(options -> options.size() == 1).forEach(o -> sure.addAll(o.get(0)));
    List<String> clauses = places(sure);
    for (List<List<Group>> options : parts) {
      if (options.size() > 1) {
        List<String> choices = new ArrayList<>();
        options.forEach(option -> choices.add(list(places(option), "and")));
        clauses.add("one of: " + String.join(", or ", choices));
      }
    }
    return clauses;
  }

  private List<String> places(List<Group> groups) {
    Map<String, Map<Group, Integer>> places = new LinkedHashMap<>();
    for (Group group : groups) {
      places
          .computeIfAbsent(words.place(group.term()), place -> new LinkedHashMap<>())
          .merge(group, 1, Integer::sum);
    }
    List<String> clauses = new ArrayList<>();
    places.forEach(
        (place, counts) -> {
          String phrases = list(phrases(counts), "and");
          clauses.add(place.isEmpty() ? phrases : phrases + " in " + place);
        });
    return clauses;
  }

  private List<String> phrases(Map<Group, Integer> counts) {
    List<Group> singles =
        counts.keySet().stream().filter(g -> g.size() == 1 && counts.get(g) == 1).toList();
    List<String> phrases = new ArrayList<>();
    counts.forEach(
        (group, count) -> {
          if (singles.size() < 2 || !singles.contains(group)) {
            phrases.add(phrase(group, count));
          } else if (group.equals(singles.get(0))) {
            phrases.add(
                "a single each of "
                    + list(singles.stream().map(g -> words.name(g.term(), 1)).toList(), "and"));
          }
        });
    return phrases;
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
