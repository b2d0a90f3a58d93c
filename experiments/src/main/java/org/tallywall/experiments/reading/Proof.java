package org.tallywall.experiments.reading;

/** Why a seat cannot take a tile, whatever she holds: facts under the rules, never evidence. */
public enum Proof {
  /** Nothing proves it. */
  NONE,
  /** Her hand was called dead. */
  DEAD_HAND,
  /** A discarded joker cannot be claimed. */
  JOKER,
  /** No hand of the card holds the kind. */
  NOT_ON_CARD,
  /** None of the hands that her exposures leave needs one more of the kind. */
  NOT_HERS,
  /** Hands that her exposures leave need it for a single or a pair, or must stay concealed. */
  NO_GROUP,
  /** Hands that her exposures leave need it, but too few tiles for them are out of view. */
  OUT
}
