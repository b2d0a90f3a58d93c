package org.tallywall.experiments.manners;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Looks at discards. */
final class DiscardRule {
  private static final int LATE = 12;

  private final NearHand near = new NearHand();
  private final ExposedHands others = new ExposedHands();
  private final Rack rack = new Rack();

  /** The slips in a discard. */
  List<Slip> of(SeatView view, Move.Discard discard) {
    List<Slip> slips = new ArrayList<>();
    int thrown = discard.tile();
    view.copyRack(rack);
    if (thrown != Tile.JOKER && hotter(view, thrown)) {
      slips.add(Slip.HOTTER_THROWN);
    }
    if (view.wallLeft() <= LATE && broken(view, thrown)) {
      slips.add(Slip.BROKEN_LATE);
    }
    return slips;
  }

  private boolean hotter(SeatView view, int thrown) {
    boolean around = view.discards() > 0 && view.discardTile(view.discards() - 1) == thrown;
    if (around || !others.use(view, thrown)) {
      return false;
    }
    near.look(view, rack, view.reach(view.seat()), 1);
    if (near.uses(thrown, view.held(thrown))) {
      return false;
    }
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (kind != thrown
          && view.held(kind) > 0
          && !near.uses(kind, view.held(kind))
          && !others.use(view, kind)) {
        return true;
      }
    }
    return false;
  }

  private boolean broken(SeatView view, int thrown) {
    if (awayWithout(view, thrown) < 2) {
      return false;
    }
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (view.held(kind) > 0 && awayWithout(view, kind) == 1 && !others.surelyWin(view, kind)) {
        return true;
      }
    }
    return false;
  }

  private int awayWithout(SeatView view, int kind) {
    rack.remove(kind);
    near.look(view, rack, view.reach(view.seat()), 0);
    rack.add(kind);
    return near.away();
  }
}
