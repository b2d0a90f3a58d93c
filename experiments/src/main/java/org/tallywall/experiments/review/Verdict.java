package org.tallywall.experiments.review;

/** How a choice compares with the best of those looked at. */
public enum Verdict {
  /** All others are clearly behind it. */
  BEST,
  /** It did best in the games played, but not all others are clearly behind. */
  AHEAD,
  /** It cannot be told apart from the best. */
  TIED,
  /** It is clearly behind. */
  BEHIND
}
