package org.tallywall.core.record;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.rules.JokerRules;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Whether an exposure just claimed would win in the same turn by joker exchanges, which at some
 * tables ranks as a mahjong claim (rule 3.5.5).
 */
final class ViaExchangeCheck {
  private final PlainHands plain;
  private final TableRules rules;
  private final ReplayTable table;

  ViaExchangeCheck(PlainHands plain, TableRules rules, ReplayTable table) {
    this.plain = plain;
    this.rules = rules;
    this.table = table;
  }

  /** Whether the claim would win; its tiles have not moved yet. */
  boolean wins(GameEvent.Claim claim, int tile) {
    JokerRules jokers = rules.jokers();
    if (!jokers.afterClaim()) {
      return false;
    }
    int claimedJoker = tile == Tile.JOKER ? 1 : 0;
    Rack rack = table.racks.get(claim.seat()).copy();
    rack.remove(claim.kind(), claim.size() - 1 - claim.jokers());
    rack.remove(Tile.JOKER, claim.jokers());
    List<Exposure> own = new ArrayList<>(table.exposures.get(claim.seat()));
    own.add(new Exposure(claim.kind(), claim.size(), claim.jokers() + claimedJoker));
    int[] redeemable = new int[Tile.KINDS];
    for (int seat = 0; seat < 4; seat++) {
      boolean isOwn = seat == claim.seat();
      if (isOwn ? jokers.own() : jokers.others()) {
        for (Exposure exposure : isOwn ? own : table.exposures.get(seat)) {
          redeemable[exposure.kind()] += exposure.jokers();
        }
      }
    }
    return completes(rack, own, redeemable, 0, jokers.perTurn());
  }

  /** Tries every number of exchanges of each kind, kind by kind. */
  private boolean completes(
      Rack rack, List<Exposure> own, int[] redeemable, int kind, int exchanges) {
    if (kind == Tile.NATURALS) {
      return !plain.complete(rack, own).isEmpty();
    }
    int most = Math.min(exchanges, Math.min(redeemable[kind], rack.held(kind)));
    for (int number = 0; number <= most; number++) {
      Rack after = rack.copy();
      after.remove(kind, number);
      after.add(Tile.JOKER, number);
      if (completes(after, own, redeemable, kind + 1, exchanges - number)) {
        return true;
      }
    }
    return false;
  }
}
