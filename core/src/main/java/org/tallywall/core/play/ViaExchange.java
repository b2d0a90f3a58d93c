package org.tallywall.core.play;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.rules.JokerRules;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Whether a claimed exposure would win in the same turn by joker exchanges (rule 3.5.5), for tables
 * where that ranks as a mahjong claim.
 */
final class ViaExchange {
  private final GameState state;
  private final HandMeter meter = new HandMeter();

  ViaExchange(GameState state) {
    this.state = state;
  }

  /**
   * Whether the claim would win.
   *
   * @param seat who claims
   * @param kind the kind that the group would show
   * @param laid the claim
   * @return true if exchanges that the rules allow complete the hand
   */
  boolean wins(int seat, int kind, ClaimChoice.Expose laid) {
    JokerRules rules = state.setup.rules().jokers();
    if (!rules.afterClaim()) {
      return false;
    }
    int fromTable = state.offered == Tile.JOKER ? 1 : 0;
    Exposure group = new Exposure(kind, laid.size(), laid.jokers() + fromTable);
    Rack rack = state.racks[seat].copy();
    rack.remove(kind, group.naturals() - 1 + fromTable);
    rack.remove(Tile.JOKER, laid.jokers());
    List<Exposure> own = new ArrayList<>(state.exposures(seat));
    own.add(group);
    List<Exposure> redeemable = new ArrayList<>(rules.own() ? own : List.of());
    for (int other = 0; other < Seats.COUNT && rules.others(); other++) {
      if (other != seat) {
        redeemable.addAll(state.exposures(other));
      }
    }
    return completes(rack, state.cache.reach(own), redeemable, rules.perTurn());
  }

  private boolean completes(Rack rack, Reach reach, List<Exposure> redeemable, int left) {
    meter.hold(rack);
    if (meter.least(reach) == 0) {
      return true;
    }
    for (int at = 0; at < redeemable.size() && left > 0; at++) {
      Exposure exposure = redeemable.get(at);
      if (exposure.jokers() > 0 && rack.held(exposure.kind()) > 0) {
        List<Exposure> after = new ArrayList<>(redeemable);
        after.set(at, exposure.redeemed());
        Rack richer = rack.copy();
        richer.remove(exposure.kind());
        richer.add(Tile.JOKER);
        if (completes(richer, reach, after, left - 1)) {
          return true;
        }
      }
    }
    return false;
  }
}
