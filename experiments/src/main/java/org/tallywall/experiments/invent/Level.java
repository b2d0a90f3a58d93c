package org.tallywall.experiments.invent;

/** For whom a card is drawn. */
enum Level {
  /** A short card for beginners: plain relations, one or two suits, few sizes of groups. */
  BEGINNERS,
  /** A card as long as those that are played. */
  FULL
}
