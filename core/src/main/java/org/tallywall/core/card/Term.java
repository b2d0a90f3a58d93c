package org.tallywall.core.card;

/**
 * What a group of a line is made of: a tile, or a rule that leaves its suit, number or wind open.
 *
 * @param type how to read the other two
 * @param value a kind, a digit 1–9, the place of a letter in {@code nmk}, or in {@code uv}
 * @param suit the suit letter b c d x y z, or 0 for none
 */
public record Term(Type type, int value, char suit) {
  /** The kinds of terms. */
  public enum Type {
    /** A wind, dragon, soap or flower; the value is its kind. */
    FIXED,
    /** A digit of a suit; it may slide. */
    DIGIT,
    /** Some number of a suit; the value is the letter's place in {@code nmk}. */
    NUMBER,
    /** The dragon that belongs to a suit. */
    DRAGON,
    /** Some wind; the value is the letter's place in {@code uv}. */
    WIND
  }

  /** The letters for some number. */
  static final String NUMBER_LETTERS = "nmk";

  /** The letters for some wind. */
  static final String WIND_LETTERS = "uv";

  /** The letters for some suit. */
  static final String SUIT_LETTERS = "xyz";

  /**
   * Whether the suit is left open.
   *
   * @return true for x, y and z
   */
  boolean openSuit() {
    return SUIT_LETTERS.indexOf(suit) >= 0 && suit != 0;
  }
}
