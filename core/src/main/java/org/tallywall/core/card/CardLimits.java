package org.tallywall.core.card;

/**
 * How large a card may be. A few hundred typed characters can stand for more hands than any memory
 * holds, so the ways in which brackets, numbers, winds, slides and suits can be read are counted
 * before a hand is made. The cards of the demo have up to 60 lines and some 1,200 hands.
 */
public final class CardLimits {
  /** Lines of a card: 1,000. */
  public static final int MOST_LINES = 1_000;

  /** Families of a card: 1,000. */
  public static final int MOST_FAMILIES = 1_000;

  /** Hands that one line prints, with every choice of its brackets as a hand of its own: 1,000. */
  public static final int MOST_PATTERNS = 1_000;

  /** Ways in which the hands of one line can be read, over all it prints: 50,000. */
  public static final int MOST_WAYS_OF_LINE = 50_000;

  /** Ways in which the hands of all lines can be read: 100,000. */
  public static final int MOST_WAYS_OF_CARD = 100_000;

  /** Points that a line pays at most, so that sums over long runs stay exact: 1,000,000. */
  public static final int MOST_VALUE = 1_000_000;

  /** Characters of the longest name: of a card, an edition, a family, an id, a nickname: 500. */
  public static final int LONGEST_NAME = 500;

  /** Characters of the longest hand, and of what numbers may be, as they are typed: 4,000. */
  public static final int LONGEST_HAND = 4_000;

  private CardLimits() {}
}
