package org.tallywall.strategies.habit;

/**
 * A player that goes through the steps of defense, and can be asked afterwards in which it was. The
 * answer is an observation only: no decision looks at it.
 */
public interface Defending {
  /**
   * The step in which the last discard was chosen.
   *
   * @return the step of the last turn in which this object was asked for a discard; {@link
   *     Stance#OWN_HAND} before the first
   */
  Stance lastStance();
}
