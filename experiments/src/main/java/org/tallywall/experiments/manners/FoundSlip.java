package org.tallywall.experiments.manners;

/**
 * A slip in a recorded game.
 *
 * @param slip which
 * @param events how many events the game had had when the player decided
 * @param seat who decided, 0 to 3
 * @param move what the player did, in the words of a position sheet
 */
public record FoundSlip(Slip slip, int events, int seat, String move) {}
