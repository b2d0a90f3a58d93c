package org.tallywall.reports.schema;

/** Limits of what columns may hold; generous, because they only keep out what cannot be. */
final class Limits {
  /** Tiles of a set, exposures, jokers: no table of four has so many. */
  static final double TILES = 1000;

  /** A chance, with room for the last digit of a computed one. */
  static final double CHANCE = 1 + 1e-9;

  /** Strengths are logarithms; their powers stay finite. */
  static final double STRENGTH = 200;

  /** What grows without end where a difference nears 0. */
  static final double BEYOND = 1e100;

  private Limits() {}
}
