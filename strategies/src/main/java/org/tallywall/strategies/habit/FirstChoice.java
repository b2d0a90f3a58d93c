package org.tallywall.strategies.habit;

/** What a player chooses first. */
enum FirstChoice {
  /** A line, at once. */
  LINE,
  /** A family, and a line of it later. */
  FAMILY
}
