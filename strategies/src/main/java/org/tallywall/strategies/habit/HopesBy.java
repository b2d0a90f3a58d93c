package org.tallywall.strategies.habit;

/** By what a player judges how likely it still wins, where it weighs that against a risk. */
public enum HopesBy {
  /** By how many tiles away its rack is, as counted on one card. */
  DISTANCE,
  /** By what its rack is worth without the tile, and by what all have laid open, on any card. */
  RACK
}
