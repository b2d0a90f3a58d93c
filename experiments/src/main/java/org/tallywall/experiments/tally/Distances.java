package org.tallywall.experiments.tally;

import java.util.Arrays;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;

/**
 * How many tiles the racks are away, measured no more often than needed: a tile more brings a rack
 * at most one nearer, so one that was five away need not be looked at for four changes.
 */
final class Distances {
  private static final int WHOLE_HAND = 14;

  private final int[] away = new int[Seats.COUNT];
  private final int[] changesToCome = new int[Seats.COUNT];
  private final boolean[] reached = new boolean[Seats.COUNT];
  private OpenTable table;

  /** Nothing measured yet. */
  Distances() {}

  /** A game begins. */
  void begin(OpenTable open) {
    table = open;
    Arrays.fill(reached, false);
    Arrays.fill(changesToCome, 0);
  }

  /** Measures racks before play. Only the last look before play counts. */
  void measureAll(int seats) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if ((seats >> seat & 1) == 1) {
        reached[seat] = false;
        measure(seat);
      }
    }
  }

  /** The distances of racks when they were measured last, summed. */
  int sum(int seats) {
    int sum = 0;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      sum += (seats >> seat & 1) == 1 ? away[seat] : 0;
    }
    return sum;
  }

  private void measure(int seat) {
    SeatView view = table.view(seat);
    away[seat] = view.meter().least();
    changesToCome[seat] = away[seat] - 1;
    // East's fourteen tiles before the first discard are no waiting hand yet.
    reached[seat] |= away[seat] <= 1 && view.rackSize() < WHOLE_HAND;
  }

  /** A tile came to a seat, or one of its naturals became a joker. */
  void changed(int seat) {
    changesToCome[seat]--;
  }

  /** A seat has discarded and is left with thirteen tiles. */
  void settled(int seat) {
    if (!reached[seat] && changesToCome[seat] <= 0) {
      measure(seat);
    }
  }

  /** Whether a seat was ever one away from a line. */
  boolean reachedOneAway(int seat) {
    return reached[seat];
  }
}
