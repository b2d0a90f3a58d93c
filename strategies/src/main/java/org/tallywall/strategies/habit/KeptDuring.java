package org.tallywall.strategies.habit;

import org.tallywall.core.play.PassStep;

/** In which passes what a player keeps, or keeps from others, is kept. */
enum KeptDuring {
  /** In all of them. */
  ALL,
  /** In the first pass alone. */
  FIRST_PASS,
  /** In the first three. */
  FIRST_ROUND,
  /** In the second round and in the courtesy pass. */
  SECOND_ROUND;

  /**
   * Whether a pass is one of them.
   *
   * @param step the pass; null for the courtesy pass, and for a question about what comes next once
   *     the first round is over
   */
  boolean covers(PassStep step) {
    boolean firstRound = step != null && step.number() <= PassStep.LEFT_1.number();
    return switch (this) {
      case ALL -> true;
      case FIRST_PASS -> step == PassStep.RIGHT_1;
      case FIRST_ROUND -> firstRound;
      case SECOND_ROUND -> !firstRound;
    };
  }
}
