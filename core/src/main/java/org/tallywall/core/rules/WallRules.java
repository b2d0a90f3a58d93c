package org.tallywall.core.rules;

/**
 * House rules about the end of the wall (7.2, 7.4).
 *
 * @param lastTiles how many tiles the last wall has; {@link #BY_DICE} for twice the dice's sum
 * @param hot whether a discarder pays for all after a hot tile from the last wall
 * @param hotFlowerNeeds how many other flowers must be accounted for, 3 to 8
 * @param cold what may not be claimed while tiles come from the last wall
 * @param finalClaim what the very last discard may be claimed for
 */
public record WallRules(
    int lastTiles, boolean hot, int hotFlowerNeeds, Cold cold, FinalClaim finalClaim) {
  /** The last wall is what the dice leave behind: two tiles for each point. */
  public static final int BY_DICE = -2;

  /** What a cold wall forbids. */
  public enum Cold {
    /** No cold wall. */
    OFF,
    /** A discard cannot be claimed for mahjong; nor can one that completes the hand be exposed. */
    NO_MAHJONG_CLAIM,
    /** A discard cannot be claimed at all. */
    NO_CLAIM
  }

  /** What the last discard of an empty wall may be claimed for. */
  public enum FinalClaim {
    /** Mahjong or an exposure. */
    ANY,
    /** Mahjong only. */
    MAHJONG_ONLY,
    /** Nothing. */
    NONE
  }

  static WallRules of(TableRules.Values values) {
    int last =
        values.is("wall.lastSegment", "DICE")
            ? BY_DICE
            : values.numberOr("wall.lastSegment", "NONE", 0);
    return new WallRules(
        last,
        !values.is("wall.hot", "OFF"),
        values.number("wall.hotFlowerNeeds"),
        values.choice("wall.cold", Cold.class),
        values.choice("wall.finalDiscard.claim", FinalClaim.class));
  }
}
