package org.tallywall.strategies.guess;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** What a seat knows of the passes so far, and what must be true because of it. */
final class KnownPasses {
  private static final int TILES = 3;

  private final int own;
  private final List<SeatView.PassSeen> steps = new ArrayList<>();
  private SeatView.PassSeen courtesy;
  private final Rack before = new Rack();
  private boolean known = true;

  /**
   * Takes them from a view.
   *
   * @param view what the seat knows
   */
  KnownPasses(SeatView view) {
    own = view.seat();
    int[] counts = new int[Tile.KINDS];
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      counts[kind] = view.held(kind);
    }
    for (SeatView.PassSeen pass : view.passes()) {
      if (pass.step() == null) {
        courtesy = pass;
      } else {
        known &= pass.step() == PassStep.values()[steps.size()] && whole(pass);
        steps.add(pass);
      }
      pass.given().forEach(kind -> counts[kind]++);
      pass.received().forEach(kind -> counts[kind]--);
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      known &= counts[kind] >= 0;
      before.add(kind, Math.max(0, counts[kind]));
    }
    known &= before.total() == view.rackSize();
  }

  private boolean whole(SeatView.PassSeen pass) {
    int blind = pass.blind().get(own);
    return pass.given().size() == TILES - blind && pass.received().size() == TILES - blind;
  }

  /**
   * Whether all passes so far are known from the first on, so that they can be played again.
   *
   * @return false too where there was none
   */
  boolean known() {
    return known && !steps.isEmpty();
  }

  /** What the seat held before the first of them. */
  Rack before() {
    return before;
  }

  /** What the seat saw of the passes in their order, the one across by agreement left out. */
  List<SeatView.PassSeen> steps() {
    return steps;
  }

  /** The pass across by agreement, or null where there was none yet. */
  SeatView.PassSeen courtesy() {
    return courtesy;
  }
}
