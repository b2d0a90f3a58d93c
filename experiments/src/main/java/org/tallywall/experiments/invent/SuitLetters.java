package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Deals the suit letters x, y and z out to numbers; a number that comes twice has two suits. */
final class SuitLetters {
  private static final String LETTERS = "xyz";

  private SuitLetters() {}

  /**
   * A letter for every number.
   *
   * @param luck what decides
   * @param numbers the numbers, each at most three times
   * @param most how many suits there may be, 1 to 3; more where a number comes more often
   * @return letters in the order of the numbers; x comes first, z last
   */
  static List<Character> of(Luck luck, List<String> numbers, int most) {
    Map<String, List<Integer>> taken = new HashMap<>();
    Map<Integer, Integer> renamed = new HashMap<>();
    List<Character> letters = new ArrayList<>();
    for (String number : numbers) {
      List<Integer> used = taken.computeIfAbsent(number, n -> new ArrayList<>());
      int suits = Math.max(most, used.size() + 1);
      int suit = luck.below(suits);
      while (used.contains(suit)) {
        suit = (suit + 1) % suits;
      }
      used.add(suit);
      Integer letter = renamed.get(suit);
      if (letter == null) {
        letter = renamed.size();
        renamed.put(suit, letter);
      }
      letters.add(LETTERS.charAt(letter));
    }
    return letters;
  }

  /** Groups of the numbers, of the given sizes, in suits. */
  static List<TileBlock> blocks(Luck luck, List<String> numbers, List<Integer> sizes, int most) {
    List<Character> letters = of(luck, numbers, most);
    List<TileBlock> blocks = new ArrayList<>();
    for (int at = 0; at < numbers.size(); at++) {
      blocks.add(new TileBlock(numbers.get(at), letters.get(at), sizes.get(at)));
    }
    return blocks;
  }
}
