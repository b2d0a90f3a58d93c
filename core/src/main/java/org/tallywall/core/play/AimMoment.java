package org.tallywall.core.play;

/** When players are asked what they aim at. */
public enum AimMoment {
  /** Right after the deal. */
  AFTER_DEAL,
  /** After the last pass. */
  AFTER_PASSES,
  /** After an own discard. */
  IN_PLAY,
  /** At the end of the game. */
  AT_END
}
