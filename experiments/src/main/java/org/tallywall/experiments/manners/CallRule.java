package org.tallywall.experiments.manners;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Looks at calls for exposures. */
final class CallRule {
  private static final int FAR = 6;

  private final NearHand near = new NearHand();
  private final Rack rack = new Rack();

  /** The slips in a call. */
  List<Slip> of(SeatView view, Move.Claim claim) {
    view.copyRack(rack);
    near.look(view, rack, view.reach(view.seat()), 0);
    int before = near.away();
    int own = claim.size() - 1 - claim.jokers();
    rack.remove(view.offered(), own);
    rack.remove(Tile.JOKER, claim.jokers());
    Exposure laid = Exposure.of(view.offered(), claim.size(), claim.jokers());
    near.look(view, rack, view.reachWith(laid), 0);
    int after = near.away();
    List<Slip> slips = new ArrayList<>();
    if (before >= FAR) {
      slips.add(Slip.FAR_CALL);
    }
    if (after >= before && claim.jokers() > 0 && rack.jokers() == 0) {
      slips.add(Slip.EMPTY_CALL);
    }
    if (claim.jokers() >= 2 && own <= 1 && after > 1) {
      slips.add(Slip.JOKERS_BESIDE_ONE);
    }
    return slips;
  }
}
