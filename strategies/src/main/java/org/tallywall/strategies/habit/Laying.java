package org.tallywall.strategies.habit;

import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;

/**
 * A claim as it would be laid.
 *
 * @param view what the seat knows before it
 * @param exposure the group laid open
 * @param rack the concealed tiles then, of which one is still to be thrown; not to be changed
 * @param left the hands that the exposure leaves possible
 */
record Laying(SeatView view, Exposure exposure, Rack rack, Reach left) {}
