package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * A line that two typings of a card have differently.
 *
 * @param first its id in the first typing, or empty where only the second has it
 * @param second its id in the second typing, or empty where only the first has it
 * @param what what differs, in words, at least one
 */
public record CardDifference(String first, String second, List<String> what) {
  /**
   * A difference.
   *
   * @param first its id in the first typing
   * @param second its id in the second typing
   * @param what what differs
   */
  public CardDifference {
    what = List.copyOf(what);
  }

  /**
   * The lines that differ in their hands, value, concealed, jokers or jokerless. Lines are matched
   * by id; those without a namesake by their order.
   *
   * @param a the first typing
   * @param b the second typing
   * @return the differences in the order of the first card, then what only the second has
   */
  public static List<CardDifference> between(Card a, Card b) {
    Map<String, Line> left = byId(a);
    Map<String, Line> right = byId(b);
    List<Line> unmatched = new ArrayList<>(right.values());
    unmatched.removeIf(line -> left.containsKey(line.id()));
    List<CardDifference> differences = new ArrayList<>();
    for (Line line : left.values()) {
      Line other = right.get(line.id());
      if (other == null && !unmatched.isEmpty()) {
        other = unmatched.remove(0);
      }
      if (other == null) {
        differences.add(new CardDifference(line.id(), "", List.of("only the first card has it")));
      } else {
        List<String> what = compare(line, other);
        if (!what.isEmpty()) {
          differences.add(new CardDifference(line.id(), other.id(), what));
        }
      }
    }
    for (Line line : unmatched) {
      differences.add(new CardDifference("", line.id(), List.of("only the second card has it")));
    }
    return differences;
  }

  private static Map<String, Line> byId(Card card) {
    Map<String, Line> lines = new LinkedHashMap<>();
    card.lines().forEach(line -> lines.put(line.id(), line));
    return lines;
  }

  private static List<String> compare(Line a, Line b) {
    List<String> what = new ArrayList<>();
    hands(a, b, what);
    differ("value", a.value(), b.value(), what);
    differ("concealed", a.concealed(), b.concealed(), what);
    differ("jokers", a.terms().jokers(), b.terms().jokers(), what);
    differ("jokerless", a.terms().jokerless(), b.terms().jokerless(), what);
    return what;
  }

  private static void differ(String field, Object a, Object b, List<String> what) {
    if (!a.equals(b)) {
      what.add(field + ": " + a + " in the first, " + b + " in the second");
    }
  }

  private static void hands(Line a, Line b, List<String> what) {
    Set<ConcreteHand> onlyA = new LinkedHashSet<>(a.hands());
    onlyA.removeAll(new LinkedHashSet<>(b.hands()));
    Set<ConcreteHand> onlyB = new LinkedHashSet<>(b.hands());
    onlyB.removeAll(new LinkedHashSet<>(a.hands()));
    only("first", onlyA, what);
    only("second", onlyB, what);
  }

  private static void only(String which, Set<ConcreteHand> hands, List<String> what) {
    if (!hands.isEmpty()) {
      what.add(
          String.format(
              Locale.ROOT,
              "hands: %d only in the %s, for example %s",
              hands.size(),
              which,
              hands.iterator().next()));
    }
  }
}
