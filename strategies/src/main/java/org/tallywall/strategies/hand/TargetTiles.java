package org.tallywall.strategies.hand;

import java.util.Arrays;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Which tiles of a rack one hand can use, and which it still lacks. */
final class TargetTiles {
  private final HandMeter meter = new HandMeter();
  private final Lack lack = new Lack();
  private final boolean[] wanted = new boolean[Tile.NATURALS];
  private final int[] spare = new int[Tile.NATURALS];

  /**
   * Works it out.
   *
   * @param rack the concealed tiles
   * @param reach the hands that the exposures leave
   * @param hand one of them, or -1 where there is none: then every tile is spare
   */
  void set(Rack rack, Reach reach, int hand) {
    Arrays.fill(wanted, false);
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int used = hand < 0 ? 0 : rack.held(kind);
      while (used > 0 && !reach.wants(hand, kind, used)) {
        used--;
      }
      spare[kind] = rack.held(kind) - used;
    }
    if (hand >= 0) {
      meter.hold(rack);
      meter.lack(reach, hand, lack);
      for (int at = 0; at < lack.kinds(); at++) {
        wanted[lack.kind(at)] = true;
      }
    }
  }

  int spare(int kind) {
    return spare[kind];
  }

  boolean wants(int kind) {
    return wanted[kind];
  }
}
