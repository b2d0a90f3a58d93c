package org.tallywall.experiments.decisions;

import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.Move;

/**
 * One decision of a recorded game.
 *
 * @param events how many events the game had had when it was made
 * @param seat who decided, 0 to 3
 * @param moment the question
 * @param move the answer
 * @param lost whether the answer was a claim for an exposure that lost to another claim: then its
 *     size and jokers are not known, and those of the move mean nothing
 * @param sheet the lines of a position sheet that says what the player knew
 */
public record Decision(
    int events, int seat, Moment moment, Move move, boolean lost, String sheet) {}
