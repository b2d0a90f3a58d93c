package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;

/** Works out every concrete hand of a pattern: slides, numbers, winds and suits. */
final class Expansion {
  private final HandPattern pattern;
  private final Where where;
  private final SuitChoice suits;
  private final Set<ConcreteHand> hands = new LinkedHashSet<>();

  private Expansion(HandPattern pattern, Where where, SuitChoice suits) {
    this.pattern = pattern;
    this.where = where;
    this.suits = suits;
  }

  /**
   * All concrete hands of one pattern, each once, makeable or not.
   *
   * @param pattern the hand as printed
   * @param slide how its digits move
   * @param where what its letters n, m and k may be
   * @param suits how its suit letters may be read
   * @return the hands in a fixed order
   */
  static Set<ConcreteHand> of(HandPattern pattern, Slide slide, Where where, SuitChoice suits) {
    Expansion expansion = new Expansion(pattern, where, suits);
    for (int shift : shifts(pattern, slide)) {
      expansion.withShift(shift);
    }
    return expansion.hands;
  }

  /**
   * In how many ways one pattern can be read: at least as many as it has concrete hands. Nothing is
   * worked out.
   *
   * @param pattern the hand as printed
   * @param slide how its digits move
   * @param where what its letters n, m and k may be
   * @param suits how its suit letters may be read
   * @return 0 or more
   */
  static long ways(HandPattern pattern, Slide slide, Where where, SuitChoice suits) {
    long ways = shifts(pattern, slide).size();
    ways *= where.letters().isEmpty() ? 1 : where.figures().size();
    for (char letter : pattern.numberLetters().toCharArray()) {
      ways *= where.letters().indexOf(letter) >= 0 ? 1 : 9;
    }
    ways *= pattern.windLetters().length() == 2 ? 12 : pattern.windLetters().isEmpty() ? 1 : 4;
    int open = pattern.openSuits().length();
    int left = 3 - pattern.writtenSuits().length();
    long bySuits = 1;
    for (int suit = 0; suit < open; suit++) {
      bySuits *= left - suit;
    }
    return ways * (bySuits + (suits == SuitChoice.OR_ONE && open > 1 ? left : 0));
  }

  /**
   * The moves that keep all digits within 1 to 9.
   *
   * @param pattern the hand as printed
   * @param slide how its digits move
   * @return the moves in ascending order, 0 among them
   */
  static List<Integer> shifts(HandPattern pattern, Slide slide) {
    int[] digits = pattern.digits();
    List<Integer> shifts = new ArrayList<>();
    for (int shift = -8; shift <= 8; shift++) {
      boolean inStep =
          slide.step() == 0 || digits.length == 0 ? shift == 0 : shift % slide.step() == 0;
      boolean inRange =
          digits.length == 0 || (digits[0] + shift >= 1 && digits[digits.length - 1] + shift <= 9);
      if (inStep && inRange) {
        shifts.add(shift);
      }
    }
    return shifts;
  }

  /**
   * A hand with its groups in the order in which they are printed.
   *
   * @param hand a concrete hand
   * @param pattern a hand as printed
   * @param printed how its digits move, and what its letters may be
   * @return the groups as words, or nothing where the pattern has no such hand
   */
  static Optional<List<String>> asPrinted(ConcreteHand hand, HandPattern pattern, Printed printed) {
    Expansion expansion = new Expansion(pattern, printed.where(), printed.suits());
    int[] sizes = expansion.sizes();
    for (int shift : shifts(pattern, printed.slide())) {
      for (int[] kinds : expansion.kinds(shift)) {
        if (new ConcreteHand(kinds, sizes).equals(hand)) {
          return Optional.of(
              IntStream.range(0, kinds.length)
                  .mapToObj(at -> TileText.word(kinds[at], sizes[at]))
                  .toList());
        }
      }
    }
    return Optional.empty();
  }

  private void withShift(int shift) {
    int[] sizes = sizes();
    kinds(shift).forEach(kinds -> hands.add(new ConcreteHand(kinds, sizes)));
  }

  private int[] sizes() {
    return pattern.groups().stream().mapToInt(Group::size).toArray();
  }

  /** The kinds of the groups, one row for each choice of numbers, winds and suits. */
  private List<int[]> kinds(int shift) {
    List<int[]> all = new ArrayList<>();
    for (int[] numbers : numberChoices()) {
      for (int[] winds : windChoices()) {
        for (int[] suitOf : suitChoices()) {
          all.add(kinds(shift, numbers, winds, suitOf));
        }
      }
    }
    return all;
  }

  private int[] kinds(int shift, int[] numbers, int[] winds, int[] suitOf) {
    int[] kinds = new int[pattern.groups().size()];
    for (int at = 0; at < kinds.length; at++) {
      Term term = pattern.groups().get(at).term();
      int suit = term.suit() == 0 ? -1 : suit(term.suit(), suitOf);
      kinds[at] =
          switch (term.type()) {
            case FIXED -> term.value();
            case DIGIT -> Tile.suited(suit, term.value() + shift);
            case NUMBER -> Tile.suited(suit, numbers[term.value()]);
            case DRAGON -> Tile.dragonOf(suit);
            case WIND -> Tile.NORTH + winds[term.value()];
          };
    }
    return kinds;
  }

  private static int suit(char letter, int[] suitOf) {
    int written = Tile.suitLetter(letter);
    return written >= 0 ? written : suitOf[Term.SUIT_LETTERS.indexOf(letter)];
  }

  private List<int[]> numberChoices() {
    List<int[]> choices = new ArrayList<>();
    String used = pattern.numberLetters();
    List<List<Integer>> figures = where.letters().isEmpty() ? List.of(List.of()) : where.figures();
    for (List<Integer> row : figures) {
      int[] numbers = new int[Term.NUMBER_LETTERS.length()];
      for (int at = 0; at < row.size(); at++) {
        numbers[Term.NUMBER_LETTERS.indexOf(where.letters().charAt(at))] = row.get(at);
      }
      fillNumbers(used, 0, numbers, choices);
    }
    return choices;
  }

  private void fillNumbers(String used, int at, int[] numbers, List<int[]> choices) {
    if (at == used.length()) {
      choices.add(numbers.clone());
      return;
    }
    int letter = Term.NUMBER_LETTERS.indexOf(used.charAt(at));
    if (where.letters().indexOf(used.charAt(at)) >= 0) {
      fillNumbers(used, at + 1, numbers, choices);
      return;
    }
    for (int number = 1; number <= 9; number++) {
      numbers[letter] = number;
      fillNumbers(used, at + 1, numbers, choices);
    }
  }

  private List<int[]> windChoices() {
    String used = pattern.windLetters();
    List<int[]> choices = new ArrayList<>();
    if (used.isEmpty()) {
      choices.add(new int[2]);
    } else if (used.length() == 1) {
      for (int wind = 0; wind < 4; wind++) {
        choices.add(new int[] {wind, wind});
      }
    } else {
      for (int u = 0; u < 4; u++) {
        for (int v = 0; v < 4; v++) {
          if (u != v) {
            choices.add(new int[] {u, v});
          }
        }
      }
    }
    return choices;
  }

  private List<int[]> suitChoices() {
    List<int[]> choices = new ArrayList<>();
    boolean[] taken = new boolean[3];
    for (char letter : pattern.writtenSuits().toCharArray()) {
      taken[Tile.suitLetter(letter)] = true;
    }
    String open = pattern.openSuits();
    fillSuits(open, 0, taken, new int[3], choices);
    if (suits == SuitChoice.OR_ONE && open.length() > 1) {
      for (int suit = 0; suit < 3; suit++) {
        if (!taken[suit]) {
          choices.add(new int[] {suit, suit, suit});
        }
      }
    }
    return choices;
  }

  private static void fillSuits(
      String open, int at, boolean[] taken, int[] suitOf, List<int[]> choices) {
    if (at == open.length()) {
      choices.add(suitOf.clone());
      return;
    }
    for (int suit = 0; suit < 3; suit++) {
      if (!taken[suit]) {
        taken[suit] = true;
        suitOf[Term.SUIT_LETTERS.indexOf(open.charAt(at))] = suit;
        fillSuits(open, at + 1, taken, suitOf, choices);
        taken[suit] = false;
      }
    }
  }
}
