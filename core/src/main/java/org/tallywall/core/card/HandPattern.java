package org.tallywall.core.card;

import java.util.List;
import java.util.function.Predicate;

/**
 * One hand of a line as printed: fourteen tiles in groups, with suits, numbers or winds left open.
 *
 * @param groups the groups in the order printed; together 14 tiles
 */
public record HandPattern(List<Group> groups) {
  /**
   * A pattern.
   *
   * @param groups the groups in the order printed
   */
  public HandPattern {
    groups = List.copyOf(groups);
  }

  /**
   * The number of tiles.
   *
   * @return 14 for a good hand
   */
  public int tiles() {
    return groups.stream().mapToInt(Group::size).sum();
  }

  /**
   * Whether a group of three or more is in it, so that jokers could stand somewhere.
   *
   * @return false for hands of singles and pairs
   */
  public boolean hasLargeGroup() {
    return groups.stream().anyMatch(group -> group.size() >= 3);
  }

  /**
   * The suit letters x, y and z used, in that order.
   *
   * @return letters without repeats, possibly empty
   */
  public String openSuits() {
    return letters(Term.SUIT_LETTERS, Term::openSuit);
  }

  /**
   * The suits written out as b, c or d, in that order.
   *
   * @return letters without repeats, possibly empty
   */
  public String writtenSuits() {
    return letters("bcd", term -> term.suit() != 0);
  }

  /**
   * The letters n, m and k used, in that order.
   *
   * @return letters without repeats, possibly empty
   */
  public String numberLetters() {
    return values(Term.Type.NUMBER, Term.NUMBER_LETTERS);
  }

  /**
   * The letters u and v used, in that order.
   *
   * @return letters without repeats, possibly empty
   */
  public String windLetters() {
    return values(Term.Type.WIND, Term.WIND_LETTERS);
  }

  /**
   * The digits that a slide moves.
   *
   * @return the different digits in ascending order; empty where the hand has none
   */
  public int[] digits() {
    return groups.stream()
        .map(Group::term)
        .filter(term -> term.type() == Term.Type.DIGIT)
        .mapToInt(Term::value)
        .sorted()
        .distinct()
        .toArray();
  }

  private String letters(String all, Predicate<Term> wanted) {
    StringBuilder used = new StringBuilder();
    for (char letter : all.toCharArray()) {
      if (groups.stream().map(Group::term).anyMatch(t -> wanted.test(t) && t.suit() == letter)) {
        used.append(letter);
      }
    }
    return used.toString();
  }

  private String values(Term.Type type, String all) {
    StringBuilder used = new StringBuilder();
    for (int at = 0; at < all.length(); at++) {
      int value = at;
      if (groups.stream().map(Group::term).anyMatch(t -> t.type() == type && t.value() == value)) {
        used.append(all.charAt(at));
      }
    }
    return used.toString();
  }
}
