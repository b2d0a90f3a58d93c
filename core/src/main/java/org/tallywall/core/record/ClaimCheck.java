package org.tallywall.core.record;

import static org.tallywall.core.record.BreachException.require;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.rules.ClaimRules;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.rules.WallRules;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Checks claims of a discard and who of several got it (rules 3.3 to 3.5). */
final class ClaimCheck {
  private final PlainHands plain;
  private final ViaExchangeCheck viaExchange;
  private final TableRules rules;
  private final ReplayTable table;
  private int from;
  private int tile;
  private boolean lastWall;

  ClaimCheck(PlainHands plain, TableRules rules, ReplayTable table) {
    this.plain = plain;
    this.viaExchange = new ViaExchangeCheck(plain, rules, table);
    this.rules = rules;
    this.table = table;
  }

  /** From now on this is the discard on offer. */
  void offer(int discarder, int thrown, boolean inLastWall) {
    from = discarder;
    tile = thrown;
    lastWall = inLastWall;
  }

  void expose(GameEvent.Claim claim) {
    require(claim.from() == from && claim.tile() == tile, "only the latest discard (rule 3.3.4)");
    require(mayClaim(claim.seat()), "this seat may not claim (rule 3.3.1)");
    require(exposeAllowed(claim.seat()), "no exposure may be claimed now (rules 7.2, 7.4)");
    require(
        legal(claim.seat(), claim.kind(), claim.size(), claim.jokers()),
        String.format(
            Locale.ROOT,
            "seat %d may not lay %d tiles of %s with %d jokers (rule 3.3)",
            claim.seat(),
            claim.size(),
            Tile.symbol(claim.kind()),
            claim.jokers()));
    losers(claim.losers(), claim.seat());
    boolean ranksAsMahjong = rules.claims().mahjongViaExchange() && viaExchange.wins(claim, tile);
    require(
        beats(claim.seat(), ranksAsMahjong, claim.losers()),
        "another claim goes first (rule 3.5.1)");
    mustDeclare(claim.losers().mahjongs(), -1);
    lay(claim);
  }

  private void lay(GameEvent.Claim claim) {
    boolean joker = tile == Tile.JOKER;
    Rack rack = table.racks.get(claim.seat());
    int naturals = claim.size() - 1 - claim.jokers();
    rack.remove(claim.kind(), naturals);
    rack.remove(Tile.JOKER, claim.jokers());
    table.takeDiscard(tile);
    table.lay(
        claim.seat(), new Exposure(claim.kind(), claim.size(), claim.jokers() + (joker ? 1 : 0)));
  }

  void mahjong(GameEvent.Mahjong mahjong) {
    require(mahjong.by().equals("discard") && mahjong.from() == from, "a win on the discard");
    require(mayClaim(mahjong.seat()), "this seat may not claim (rule 3.3.1)");
    require(mahjongAllowed(), "mahjong may not be claimed now (rules 7.2, 7.4)");
    require(completeWith(mahjong.seat()), "the 14 tiles are not a hand of the card (rule 5.2)");
    losers(mahjong.losers(), mahjong.seat());
    require(beats(mahjong.seat(), true, mahjong.losers()), "another claim goes first (rule 3.5.1)");
    mustDeclare(mahjong.losers().mahjongs(), mahjong.seat());
  }

  /** Nobody claimed: at tables where a complete hand must be declared, nobody could have. */
  void nobody() {
    mustDeclare(List.of(), -1);
  }

  private void mustDeclare(List<Integer> losers, int winner) {
    for (int seat = 0; seat < 4 && !rules.win().mayDecline(); seat++) {
      boolean silent = seat != winner && !losers.contains(seat);
      require(
          !silent || !mayClaim(seat) || !mahjongAllowed() || !completeWith(seat),
          "the complete hand of seat " + seat + " is declared (rule 5.3.1)");
    }
  }

  private boolean mayClaim(int seat) {
    boolean jokerBarred = tile == Tile.JOKER && !rules.jokers().discardClaimable();
    return seat != from && !table.dead[seat] && !jokerBarred;
  }

  private boolean exposeAllowed(int seat) {
    boolean cold = lastWall && rules.wall().cold() == WallRules.Cold.NO_CLAIM;
    boolean last = table.left() == 0 && rules.wall().finalClaim() != WallRules.FinalClaim.ANY;
    return !cold && !last && (mahjongAllowed() || !completeWith(seat));
  }

  private boolean mahjongAllowed() {
    boolean cold = lastWall && rules.wall().cold() != WallRules.Cold.OFF;
    boolean last = table.left() == 0 && rules.wall().finalClaim() == WallRules.FinalClaim.NONE;
    return !cold && !last;
  }

  private boolean completeWith(int seat) {
    Rack rack = table.racks.get(seat).copy();
    rack.add(tile);
    return !plain.complete(rack, table.exposures.get(seat)).isEmpty();
  }

  private boolean legal(int seat, int kind, int size, int jokers) {
    Rack rack = table.racks.get(seat);
    boolean joker = tile == Tile.JOKER;
    int naturals = size - 1 - jokers;
    int least = Math.max(rules.claims().naturalsFromRack(), joker ? 1 : 0);
    boolean there =
        (joker || kind == tile)
            && kind != Tile.JOKER
            && naturals >= least
            && naturals <= rack.held(kind)
            && jokers <= rack.jokers()
            && rack.total() - size + 1 >= 1;
    if (!there) {
      return false;
    }
    List<Exposure> after = new ArrayList<>(table.exposures.get(seat));
    after.add(new Exposure(kind, size, jokers + (joker ? 1 : 0)));
    return !rules.claims().strictFit() || plain.fits(after);
  }

  private void losers(GameEvent.Losers losers, int winner) {
    ascending(losers.exposures());
    ascending(losers.mahjongs());
    for (int seat : losers.exposures()) {
      boolean once = seat != winner && !losers.mahjongs().contains(seat);
      require(
          once && mayClaim(seat) && exposeAllowed(seat) && anyExposure(seat),
          "seat " + seat + " could not have claimed an exposure as well (rule 3.3)");
    }
    for (int seat : losers.mahjongs()) {
      require(
          seat != winner && mayClaim(seat) && mahjongAllowed() && completeWith(seat),
          "seat " + seat + " could not have claimed mahjong as well (rule 5.2)");
    }
  }

  private static void ascending(List<Integer> seats) {
    int last = -1;
    for (int seat : seats) {
      require(seat > last && seat < 4, "seats are 0 to 3, once each, ascending");
      last = seat;
    }
  }

  private boolean anyExposure(int seat) {
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      for (int size = 3; size <= 6; size++) {
        for (int jokers = 0; jokers < size; jokers++) {
          if (legal(seat, kind, size, jokers)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** Mahjong before exposures, then the next in turn (3.5.1), as far as the table plays so. */
  private boolean beats(int winner, boolean asMahjong, GameEvent.Losers losers) {
    ClaimRules claims = rules.claims();
    boolean first = true;
    for (int seat : losers.exposures()) {
      boolean nearer = (winner - from + 4) % 4 < (seat - from + 4) % 4;
      first &= nearer || (asMahjong && claims.mahjongFirst());
    }
    for (int seat : losers.mahjongs()) {
      boolean nearer = (winner - from + 4) % 4 < (seat - from + 4) % 4;
      first &= nearer && (asMahjong || !claims.mahjongFirst());
    }
    return first;
  }
}
