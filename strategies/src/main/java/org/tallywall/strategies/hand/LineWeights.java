package org.tallywall.strategies.hand;

import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;

/**
 * What the hands within reach count for besides their chance and their value: where opinions on
 * what to aim at go in. A function of what is judged alone; what it keeps from {@link #begin} holds
 * until the next.
 */
public interface LineWeights {
  /** All hands count for what they are. */
  LineWeights EVEN =
      new LineWeights() {
        @Override
        public void begin(SeatView view, Rack rack, Reach possible) {
          // nothing depends on the rack
        }

        @Override
        public double of(int hand, Lack lack, int naturals) {
          return 1;
        }
      };

  /**
   * A rack is about to be judged.
   *
   * @param view what the seat knows
   * @param rack the concealed tiles judged, which need not be those that the seat holds
   * @param possible the hands that the exposures leave
   */
  void begin(SeatView view, Rack rack, Reach possible);

  /**
   * By what the worth of a hand is multiplied.
   *
   * @param hand its index among the possible hands
   * @param lack what the rack lacks of it
   * @param naturals how many tiles of singles and pairs are missing, a tile to be lost counted
   * @return 0 or more; 1 leaves the worth as it is
   */
  double of(int hand, Lack lack, int naturals);

  /**
   * How much jokers on the rack count.
   *
   * @return 0 to 1; 1 in full, 0 as if there were none
   */
  default double jokers() {
    return 1;
  }

  /**
   * How many lines are kept in view.
   *
   * @param usual the number set
   * @param least distance of the nearest hand
   * @return 1 to {@code usual}
   */
  default int lines(int usual, int least) {
    return usual;
  }
}
