package org.tallywall.core.tile;

/**
 * The 36 kinds of tiles as whole numbers, in the order in which racks are printed.
 *
 * <p>Kinds 0–8 are 1 to 9 bam, 9–17 craks, 18–26 dots, 27–30 the winds N E W S, 31–33 red, green
 * and soap, 34 the flower and 35 the joker. Plain numbers are used because the inner loops of the
 * engine index arrays with them.
 */
public final class Tile {
  /** Number of kinds, the joker included: 36. */
  public static final int KINDS = 36;

  /** Number of natural kinds, that is all but the joker: 35. */
  public static final int NATURALS = 35;

  /** Kind of the first suited tile of bams; craks begin 9 later, dots 18 later. */
  public static final int FIRST_BAM = 0;

  /** Kind of the north wind; E, W and S follow. */
  public static final int NORTH = 27;

  /** Kind of the east wind. */
  public static final int EAST = 28;

  /** Kind of the west wind. */
  public static final int WEST = 29;

  /** Kind of the south wind. */
  public static final int SOUTH = 30;

  /** Kind of the red dragon, which belongs to craks. */
  public static final int RED = 31;

  /** Kind of the green dragon, which belongs to bams. */
  public static final int GREEN = 32;

  /** Kind of soap: the white dragon, which belongs to dots and also reads as zero. */
  public static final int SOAP = 33;

  /** Kind of the flower; all flowers are alike (rule 1.1.1). */
  public static final int FLOWER = 34;

  /** Kind of the joker. */
  public static final int JOKER = 35;

  private static final String SUIT_LETTERS = "bcd";
  private static final String HONOR_LETTERS = "NEWSRG0FJ";

  private Tile() {}

  /**
   * The kind of a suited tile.
   *
   * @param suit 0 bams, 1 craks, 2 dots
   * @param number 1 to 9
   * @return its kind, 0 to 26
   */
  public static int suited(int suit, int number) {
    if (suit < 0 || suit > 2 || number < 1 || number > 9) {
      throw new IllegalArgumentException("no tile has suit " + suit + " and number " + number);
    }
    return suit * 9 + number - 1;
  }

  /**
   * The dragon that belongs to a suit: green to bams, red to craks, soap to dots.
   *
   * @param suit 0 bams, 1 craks, 2 dots
   * @return the dragon's kind
   */
  public static int dragonOf(int suit) {
    return switch (suit) {
      case 0 -> GREEN;
      case 1 -> RED;
      case 2 -> SOAP;
      default -> throw new IllegalArgumentException("no suit " + suit);
    };
  }

  /**
   * Whether a kind has a suit and a number.
   *
   * @param kind a kind, 0 to 35
   * @return true for bams, craks and dots
   */
  public static boolean isSuited(int kind) {
    return kind >= 0 && kind < NORTH;
  }

  /**
   * The suit of a suited kind.
   *
   * @param kind a suited kind, 0 to 26
   * @return 0 bams, 1 craks, 2 dots
   */
  public static int suitOf(int kind) {
    return kind / 9;
  }

  /**
   * The number of a suited kind.
   *
   * @param kind a suited kind, 0 to 26
   * @return 1 to 9
   */
  public static int numberOf(int kind) {
    return kind % 9 + 1;
  }

  /**
   * The symbol of a kind, as in {@code 4b}, {@code N}, {@code 0}.
   *
   * @param kind a kind, 0 to 35
   * @return its symbol in the notation
   */
  public static String symbol(int kind) {
    if (isSuited(kind)) {
      return numberOf(kind) + String.valueOf(SUIT_LETTERS.charAt(suitOf(kind)));
    }
    return String.valueOf(HONOR_LETTERS.charAt(kind - NORTH));
  }

  /**
   * The kind that a letter without suit stands for.
   *
   * @param letter one of N E W S R G 0 F J
   * @return its kind, or -1 where the letter is no such tile
   */
  public static int honor(char letter) {
    int at = HONOR_LETTERS.indexOf(letter);
    return at < 0 ? -1 : NORTH + at;
  }

  /**
   * The suit that a letter stands for.
   *
   * @param letter any character
   * @return 0 for b, 1 for c, 2 for d, else -1
   */
  public static int suitLetter(char letter) {
    return SUIT_LETTERS.indexOf(letter);
  }

  /**
   * The letter of a suit.
   *
   * @param suit 0 bams, 1 craks, 2 dots
   * @return b, c or d
   */
  public static char letterOf(int suit) {
    return SUIT_LETTERS.charAt(suit);
  }
}
