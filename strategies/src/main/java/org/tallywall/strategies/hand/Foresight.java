package org.tallywall.strategies.hand;

import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;

/**
 * What a judge of racks is told beside what its seat sees. A fair judge is told {@link #NOTHING};
 * anything else is for yardsticks, which show what it would be worth to know.
 */
public interface Foresight {
  /** Nothing at all. */
  Foresight NOTHING =
      new Foresight() {
        @Override
        public int addDraws(SeatView view, boolean throwsFirst, Rack to) {
          return 0;
        }

        @Override
        public int elsewhere(int kind) {
          return 0;
        }
      };

  /**
   * Adds the tiles that the seat draws next, if nobody claims before.
   *
   * @param view what the seat knows
   * @param throwsFirst whether the seat throws a tile before anybody draws; else the tile on offer
   *     goes by
   * @param to takes them
   * @return how many were added, 0 where none is told
   */
  int addDraws(SeatView view, boolean throwsFirst, Rack to);

  /**
   * How many tiles of a kind lie in the racks of the others.
   *
   * @param kind a kind, 0 to 35
   * @return 0 where it is not told
   */
  int elsewhere(int kind);
}
