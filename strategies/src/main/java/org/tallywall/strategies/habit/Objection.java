package org.tallywall.strategies.habit;

/** What keeps a player from something that it could do. */
public enum Objection {
  /** Nothing. */
  NONE,
  /** The wall is too long for it, or too many of the tile are unseen, by its settings. */
  TOO_EARLY,
  /** The hand is too far away for it, by its settings. */
  TOO_FAR,
  /** No hand in mind wants the tile. */
  UNWANTED,
  /** It would show more jokers than the player shows at this distance. */
  JOKERS,
  /** The rack would not be worth enough more. */
  NOT_WORTH_IT,
  /** The nearest hand would not be near enough. */
  NOT_NEARER,
  /** Too few groups would be finished. */
  FEW_GROUPS,
  /** It would tell the others too much, or cost too many lines. */
  TELLS,
  /** It would leave a wait for a pair, or a joker to be redeemed. */
  LEAVES_BADLY,
  /** The hand is given up. */
  GIVEN_UP
}
