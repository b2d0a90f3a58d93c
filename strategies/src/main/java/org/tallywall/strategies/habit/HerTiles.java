package org.tallywall.strategies.habit;

/** What a player that holds back does with the tiles an opponent wants. */
public enum HerTiles {
  /** Weighs them against its own hand. */
  WEIGH,
  /** Keeps them all, whatever it costs. */
  KEEP
}
