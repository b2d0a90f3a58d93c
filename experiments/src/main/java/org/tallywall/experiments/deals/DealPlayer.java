package org.tallywall.experiments.deals;

import org.tallywall.experiments.run.PlayerFaultException;
import org.tallywall.experiments.tally.StudyTally;

/** Plays all games that a study has on one deal, and counts them. */
public interface DealPlayer {
  /**
   * Plays a deal.
   *
   * @param deal its number
   * @param into takes the counts
   * @throws PlayerFaultException if a player spoils a game; the counts are then of no use
   */
  void play(long deal, StudyTally into);
}
