package org.tallywall.strategies.hand;

import org.tallywall.core.play.SeatView;

/**
 * What a judge of racks is told beside what its seat sees. A fair judge is told {@link #NOTHING};
 * anything else is for yardsticks, which show what it would be worth to know.
 */
public interface Foresight {
  /** No draws. */
  int[] NONE = {};

  /** Nothing at all. */
  Foresight NOTHING =
      new Foresight() {
        @Override
        public int[] draws(SeatView view, boolean throwsFirst) {
          return NONE;
        }

        @Override
        public int elsewhere(int kind) {
          return 0;
        }
      };

  /**
   * The tiles that the seat draws next, if nobody claims before and no more hands die.
   *
   * @param view what the seat knows
   * @param throwsFirst whether the seat throws a tile before anybody draws; else the tile on offer
   *     goes by
   * @return as many as are told, the next first; not to be changed
   */
  int[] draws(SeatView view, boolean throwsFirst);

  /**
   * How many tiles of a kind lie in the racks of the others.
   *
   * @param kind a kind, 0 to 35
   * @return 0 where it is not told
   */
  int elsewhere(int kind);
}
