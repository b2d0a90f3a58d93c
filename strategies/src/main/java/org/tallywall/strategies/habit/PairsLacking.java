package org.tallywall.strategies.habit;

import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.NearHands;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.hand.Obtainable;

/** How far the nearest living hands are, and how many tiles of singles and pairs they lack. */
final class PairsLacking {
  private final HandMeter meter = new HandMeter();
  private final Obtainable obtainable = new Obtainable();
  private final NearHands near = new NearHands();
  private final Lack lack = new Lack();
  private int fewest;

  /**
   * Measures a rack.
   *
   * @param view what the seat knows
   * @param rack the concealed tiles
   * @param possible the hands that the exposures leave
   */
  void measure(SeatView view, Rack rack, Reach possible) {
    obtainable.count(view);
    meter.obtainable(obtainable.counts());
    meter.hold(rack);
    meter.nearest(possible, 0, near);
    fewest = near.count() == 0 ? 0 : HandMeter.NONE;
    for (int at = 0; at < near.count(); at++) {
      meter.lack(possible, near.hand(at), lack);
      fewest = Math.min(fewest, lack.naturals());
    }
  }

  /**
   * The least distance.
   *
   * @return 0 to 14, or {@link HandMeter#NONE} where all hands are dead
   */
  int away() {
    return near.least();
  }

  /**
   * How many tiles of singles and pairs lack, in the nearest hand that lacks fewest of them.
   *
   * @return 0 or more; 0 where all hands are dead
   */
  int fewest() {
    return fewest;
  }
}
