package org.tallywall.experiments.gauges.calibration;

import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.tile.Rack;

/** What is true of a rack. */
final class RackFacts {
  private final HandMeter meter = new HandMeter();
  private int[] away = {};
  private long held;
  private long waits;
  private int least;

  /**
   * Looks at a rack.
   *
   * @param reach the hands that the exposures leave possible
   * @param rack the concealed tiles
   */
  void look(Reach reach, Rack rack) {
    if (away.length != reach.hands().lines()) {
      away = new int[reach.hands().lines()];
    }
    held = rack.kinds();
    meter.hold(rack);
    meter.leastByLine(reach, away);
    least = HandMeter.NONE;
    for (int one : away) {
      least = Math.min(least, one);
    }
    waits = least == 1 ? meter.waits(reach) : 0;
  }

  /** A bit for each kind held. */
  long held() {
    return held;
  }

  /** A bit for each kind that completes the hand. */
  long waits() {
    return waits;
  }

  /** How many tiles the rack is away from the nearest hand. */
  int least() {
    return least;
  }

  /** Whether the exposures leave a line possible. */
  boolean possible(int line) {
    return away[line] < HandMeter.NONE;
  }

  /** Whether no line is nearer than this one. */
  boolean nearest(int line) {
    return possible(line) && away[line] == least;
  }
}
