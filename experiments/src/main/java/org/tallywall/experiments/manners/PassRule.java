package org.tallywall.experiments.manners;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Looks at tiles given to one player at once, in a pass or across. */
final class PassRule {
  private static final int TOGETHER = 3;

  private final NearHand near = new NearHand();
  private final Rack rack = new Rack();
  private final int[] given = new int[Tile.KINDS];

  /** The slips in what is given. */
  List<Slip> of(SeatView view, Move.Pass pass) {
    Arrays.fill(given, 0);
    pass.own().forEach(kind -> given[kind]++);
    List<Slip> slips = new ArrayList<>();
    if (pair() && holdsSingle(view)) {
      slips.add(Slip.PAIR_PASSED);
    }
    if (different(Tile.NORTH, Tile.SOUTH) >= TOGETHER
        || different(Tile.RED, Tile.SOAP) >= TOGETHER) {
      slips.add(Slip.HONORS_PASSED);
    }
    if (given[Tile.FLOWER] > 0 && usesFlowers(view.table().hands()) && keepsUseless(view)) {
      slips.add(Slip.FLOWER_PASSED);
    }
    return slips;
  }

  private boolean pair() {
    for (int kind = 0; kind < Tile.FLOWER; kind++) {
      if (given[kind] >= 2) {
        return true;
      }
    }
    return false;
  }

  private static boolean holdsSingle(SeatView view) {
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (view.held(kind) == 1) {
        return true;
      }
    }
    return false;
  }

  private int different(int first, int last) {
    int count = 0;
    for (int kind = first; kind <= last; kind++) {
      count += given[kind] > 0 ? 1 : 0;
    }
    return count;
  }

  private static boolean usesFlowers(ConcreteHands hands) {
    for (int at = 0; at < hands.size(); at++) {
      if (hands.hand(at).total(Tile.FLOWER) > 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether a tile other than a flower stays that none of the nearest hands uses. */
  private boolean keepsUseless(SeatView view) {
    view.copyRack(rack);
    near.look(view, rack, view.reach(view.seat()), 0);
    for (int kind = 0; kind < Tile.FLOWER; kind++) {
      int kept = view.held(kind) - given[kind];
      if (kept > 0 && !near.uses(kind, kept)) {
        return true;
      }
    }
    return false;
  }
}
