package org.tallywall.core.play;

/** What a player does with a discard on offer. Choices are ready made: no object is created. */
public sealed interface ClaimChoice {
  /** Lets it lie. */
  record Nothing() implements ClaimChoice {}

  /**
   * Claims it for an exposure (rule 3.3.5).
   *
   * @param kind the kind that the group shows; {@link #AS_OFFERED} unless a joker is claimed
   * @param size number of tiles, 3 to 6
   * @param jokers jokers from the rack, 0 to {@code size - 1}
   */
  record Expose(int kind, int size, int jokers) implements ClaimChoice {
    /** The group shows the kind of the tile on offer. */
    public static final int AS_OFFERED = -1;
  }

  /**
   * Claims it for mahjong.
   *
   * @param line the line named, or {@link #BEST_LINE}
   */
  record Mahjong(int line) implements ClaimChoice {
    /** The line that pays most. */
    public static final int BEST_LINE = -1;
  }

  /**
   * Letting the discard lie.
   *
   * @return the choice
   */
  static ClaimChoice nothing() {
    return ClaimChoices.NOTHING;
  }

  /**
   * Claiming for mahjong on the line that pays most.
   *
   * @return the choice
   */
  static ClaimChoice mahjong() {
    return ClaimChoices.MAHJONG;
  }

  /**
   * Claiming for an exposure; what size and jokers leave are naturals from the rack.
   *
   * @param size number of tiles, 3 to 6
   * @param jokers jokers from the rack, 0 to {@code size - 1}
   * @return the choice
   */
  static ClaimChoice expose(int size, int jokers) {
    return ClaimChoices.EXPOSE[size][jokers];
  }
}
