package org.tallywall.experiments.run;

/**
 * Which game of a study it is.
 *
 * @param deal the deal, from 0
 * @param game the game's running number in the study, from 0
 * @param arm the way of playing, or empty
 * @param seat the studied seat, or -1 where the game serves all
 */
public record GamePlace(long deal, long game, String arm, int seat) {
  /** A game that serves all seats. */
  public static final int ALL = -1;
}
