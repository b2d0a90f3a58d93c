package org.tallywall.core.card;

import java.util.Arrays;
import java.util.stream.Collectors;

/** How the digits of a hand may move, in words. */
final class SlideWords {
  private static final String[] COUNTS = {
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"
  };

  private SlideWords() {}

  /**
   * The clause.
   *
   * @param digits the different digits in ascending order, at least one
   * @param slide how they move; not none
   * @return as in {@code any five in a row}
   */
  static String of(int[] digits, Slide slide) {
    if (slide == Slide.ANY) {
      return row(digits, "numbers", 1, 1);
    }
    String parity = digits[0] % 2 == 0 ? "even" : "odd";
    boolean alike = Arrays.stream(digits).allMatch(digit -> digit % 2 == digits[0] % 2);
    return alike
        ? row(digits, parity + " numbers", 2, digits[0] % 2 == 0 ? 2 : 1)
        : row(digits, "numbers", 1, 1) + ", the lowest " + parity;
  }

  private static String row(int[] digits, String what, int next, int from) {
    if (digits.length == 1) {
      return "any one " + what.replaceAll("s$", "");
    }
    int gap = digits[1] - digits[0];
    boolean even = true;
    for (int at = 2; at < digits.length; at++) {
      even &= digits[at] - digits[at - 1] == gap;
    }
    String any = "any " + COUNTS[digits.length];
    if (even && gap == next) {
      return any + (what.equals("numbers") ? "" : " " + what) + " in a row";
    } else if (even) {
      return any + " " + what + " " + COUNTS[gap] + " apart";
    }
    return what
        + " spaced as in "
        + Arrays.stream(digits)
            .mapToObj(digit -> String.valueOf(digit - digits[0] + from))
            .collect(Collectors.joining(" "));
  }
}
