package org.tallywall.strategies.habit;

/** Which tiles a player gives across. */
enum CourtesyTiles {
  /** The strangers that are missed least. */
  STRANGERS,
  /** First those strangers that most of the card uses. */
  DANGEROUS_FIRST
}
