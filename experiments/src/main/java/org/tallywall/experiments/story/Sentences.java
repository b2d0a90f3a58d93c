package org.tallywall.experiments.story;

import java.util.List;

/** Small things about sentences. */
final class Sentences {
  private static final List<String> NUMBERS =
      List.of("none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");

  private Sentences() {}

  /** Parts in a row, the last one behind "and". */
  static String list(List<String> parts) {
    int last = parts.size() - 1;
    return last < 1
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  /** A small number as a word. */
  static String number(int number) {
    return number < NUMBERS.size() ? NUMBERS.get(number) : String.valueOf(number);
  }

  /** Words with a capital letter. */
  static String upper(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** The sentence with a capital letter and a full stop. */
  static String sentence(String words) {
    return upper(words) + ".";
  }
}
