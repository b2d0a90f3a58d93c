package org.tallywall.experiments.run;

/**
 * A game that a player spoiled. Its deal is set aside with all its games.
 *
 * @param deal the deal, from 0
 * @param arm the way of playing, or empty
 * @param studied the studied seat, or -1 where one game serves all
 * @param seat where the player sat
 * @param illegal whether it answered with an illegal move; else it broke down
 * @param what what the engine said of an illegal move, or empty
 */
public record SpoiledDeal(
    long deal, String arm, int studied, int seat, boolean illegal, String what) {}
