package org.tallywall.experiments.school;

import org.tallywall.core.sheet.Move;

/**
 * A decision that was drawn, found again in its game.
 *
 * @param lot which one
 * @param seat who decided, 0 to 3
 * @param wall tiles left in the wall; what is left after the deal during the passes
 * @param move the answer
 * @param sheet the text of a position sheet that says what the player knew
 */
record Found(Lots.Lot lot, int seat, int wall, Move move, String sheet) {}
