package org.tallywall.experiments.manners;

/**
 * A kind of decision at which a strong teacher would laugh. Each has a rule that looks at what the
 * player knew and at nothing else, so it may be counted though it cost nothing, and may be right
 * for once. One decision may be several slips. "Nearest hands" are the living hands of the card
 * that are fewest tiles away.
 */
public enum Slip {
  /** A pair went to one player. */
  PAIR_PASSED(
      "pair passed",
      "Two of the same tile given to one player at once, flowers aside, by somebody who holds a"
          + " single tile."),
  /** Three winds or three dragons went to one player. */
  HONORS_PASSED(
      "honors passed together",
      "Three different winds, or three different dragons, given to one player at once."),
  /** A flower was passed. */
  FLOWER_PASSED(
      "flower passed",
      "A flower given away, on a card that uses flowers, while the player keeps another tile that"
          + " none of her nearest hands uses."),
  /** A call from far away. */
  FAR_CALL(
      "call from far away", "A call for an exposure by a hand that is six or more tiles away."),
  /** A call that brings nothing and lays the last joker. */
  EMPTY_CALL(
      "last joker for nothing",
      "A call for an exposure that brings the hand no nearer and shows its last joker."),
  /** Two jokers beside one tile. */
  JOKERS_BESIDE_ONE(
      "two jokers beside one tile",
      "A call that lays two or more jokers beside at most one tile of the player's own, unless it"
          + " makes the hand one away."),
  /** The hotter of two useless tiles. */
  HOTTER_THROWN(
      "hotter of two thrown",
      "Of two tiles that no hand uses within a tile of the nearest, the one thrown that a living"
          + " hand of somebody with an exposure can use, and the one kept that none can; not"
          + " where it went round unclaimed just before."),
  /** A hand one away was broken late. */
  BROKEN_LATE(
      "ready hand broken late",
      "With twelve tiles in the wall or fewer, a hand one away thrown back to two or more while it"
          + " held a tile to throw that keeps it, unless somebody with three exposures surely wins on"
          + " each such tile.");

  private final String heading;
  private final String rule;

  Slip(String heading, String rule) {
    this.heading = heading;
    this.rule = rule;
  }

  /**
   * What it is called in tables.
   *
   * @return a few words in small letters
   */
  public String heading() {
    return heading;
  }

  /**
   * What is counted.
   *
   * @return a sentence
   */
  public String rule() {
    return rule;
  }
}
