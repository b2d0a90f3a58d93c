package org.tallywall.core.tile;

/** What somebody meant who typed a letter that no tile is written with. */
public final class LetterHint {
  private static final String CURLY = "\u201C\u201D\u201E\u2018\u2019\u201A";

  private LetterHint() {}

  /**
   * What to write in place of a letter.
   *
   * @param letter the letter, which is not one of those known
   * @param known every letter and digit that may be written
   * @return as in "; write F", or empty where nothing is near
   */
  public static String of(int letter, String known) {
    if (letter == 'O' || letter == 'o') {
      return "; write 0, the digit zero";
    } else if (letter == 'l' || letter == 'I') {
      return "; write 1, the digit one";
    } else if (letter == 's' && known.indexOf('S') >= 0) {
      return "; write S for south, 0 for soap";
    } else if (letter == 'w' && known.indexOf('W') >= 0) {
      return "; write W for west, 0 for the white dragon";
    } else if (letter == 'D') {
      return "; write d for dots, or R, G, 0 for a dragon";
    } else if (CURLY.indexOf(letter) >= 0) {
      return "; take the curly quote out, and turn smart quotes off in the editor";
    }
    int other =
        Character.isUpperCase(letter)
            ? Character.toLowerCase(letter)
            : Character.toUpperCase(letter);
    return other != letter && known.indexOf(other) >= 0
        ? "; write " + Character.toString(other)
        : "";
  }
}
