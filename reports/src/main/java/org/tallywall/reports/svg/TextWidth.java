package org.tallywall.reports.svg;

import java.util.Arrays;

/**
 * How wide a text becomes, without asking a font, so that a picture is the same everywhere. The
 * widths are those of DejaVu Sans, in hundredths of the letter size, measured once; it is among the
 * widest of the fonts that stand for "sans-serif", so a text that fits here fits with others.
 */
final class TextWidth {
  private static final int FIRST = ' ';
  private static final int LAST = '~';

  /** Letters of the same width, and the width: upright first, then bold. */
  private static final String[] LETTERS = {
    "'ijl",
    "IJ ,./:;\\|",
    "f-()[]t",
    "!r",
    "\"*_`sz",
    "?cFkLPvxyTYaeo",
    "$0123456789ESbdghnpqu{}",
    "KABVXZCR",
    "UNH&DGOQ",
    "w#+<=>^~",
    "M%mW@"
  };

  private static final int[] PLAIN = {28, 34, 40, 42, 53, 62, 64, 70, 79, 84, 100};
  private static final int[] BOLD = {35, 40, 48, 50, 60, 70, 73, 78, 88, 93, 111};

  /** What a letter outside the table takes: accented letters, and signs. */
  private static final int OTHER_PLAIN = 84;

  private static final int OTHER_BOLD = 93;

  /** From here on (Hangul, kana, Han, pictographs) letters are as wide as high. */
  private static final int WIDE_FROM = 0x1100;

  private static final int WIDE = 110;

  private static final int[] PLAIN_TABLE = table(PLAIN, OTHER_PLAIN);
  private static final int[] BOLD_TABLE = table(BOLD, OTHER_BOLD);

  private TextWidth() {}

  static double of(String text, Face face) {
    boolean bold = face.bold();
    int[] table = bold ? BOLD_TABLE : PLAIN_TABLE;
    int other = bold ? OTHER_BOLD : OTHER_PLAIN;
    int sum = text.codePoints().map(c -> width(c, table, other)).sum();
    return sum * face.size() / 100.0;
  }

  private static int width(int letter, int[] table, int other) {
    if (letter >= FIRST && letter <= LAST) {
      return table[letter - FIRST];
    }
    return letter >= WIDE_FROM && !isSign(letter) ? WIDE : other;
  }

  /** General punctuation, arrows and mathematical signs are no wider than a digit or a dash. */
  private static boolean isSign(int letter) {
    return letter >= 0x2000 && letter < 0x2300;
  }

  private static int[] table(int[] widths, int other) {
    int[] table = new int[LAST - FIRST + 1];
    Arrays.fill(table, other);
    for (int i = 0; i < LETTERS.length; i++) {
      int width = widths[i];
      LETTERS[i].chars().forEach(c -> table[c - FIRST] = width);
    }
    return table;
  }
}
