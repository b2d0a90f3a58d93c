package org.tallywall.strategies.habit;

import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.rules.Settlement;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.read.Stakes;

/**
 * A discard that completes the hand, laid open instead of declared on: the hand is then completed
 * by a joker exchange, which is paid as self-picked, also in a turn that began with a claim (rule
 * 4.4.11). Done where that pays more.
 */
final class DearerWin {
  private static final double LOSERS = 3;

  private final HandMeter meter = new HandMeter();
  private final Rack rack = new Rack();
  private final Rack left = new Rack();
  private final Rack after = new Rack();
  private TableRules rules;
  private Settlement settlement;
  private double onDiscard;

  DearerWin() {}

  private void look(SeatView view) {
    if (rules != view.table().rules()) {
      rules = view.table().rules();
      settlement = new Settlement(rules);
      onDiscard = Stakes.of(rules).payingAll();
    }
    view.copyRack(rack);
  }

  /**
   * An exposure to lay with the tile on offer, which completes the hand, so that an exchange can
   * follow.
   *
   * @param view what the seat knows, with a tile on offer that completes its hand
   * @return the claim, or null where declaring now pays as much
   */
  ClaimChoice claim(SeatView view) {
    look(view);
    if (!rules.jokers().afterClaim()
        || rules.jokers().perTurn() < 1
        || view.offered() == Tile.JOKER) {
      return null;
    }
    rack.add(view.offered());
    double most = onDiscard * unit(view.reach(view.seat()), rack, shown(view));
    rack.remove(view.offered());
    ClaimChoice best = null;
    for (ClaimChoice choice : LegalMoves.exposures(view)) {
      ClaimChoice.Expose laid = (ClaimChoice.Expose) choice;
      Exposure own = Exposure.of(view.offered(), laid.size(), laid.jokers());
      left.set(rack);
      left.remove(own.kind(), own.naturals() - 1);
      left.remove(Tile.JOKER, own.jokers());
      double paid = byExchange(view, view.reachWith(own), own);
      if (paid > most) {
        most = paid;
        best = choice;
      }
    }
    return best;
  }

  /** The most that an exchange would bring which leaves the hand complete. */
  private double byExchange(SeatView view, Reach reach, Exposure more) {
    double most = redeemed(view, left, reach, more, view.seat(), more);
    for (int owner = 0; owner < Seats.COUNT; owner++) {
      for (Exposure exposure : view.exposures(owner)) {
        most = Math.max(most, redeemed(view, left, reach, exposure, owner, more));
      }
    }
    return most;
  }

  private double redeemed(
      SeatView view, Rack tiles, Reach reach, Exposure exposure, int owner, Exposure more) {
    boolean own = owner == view.seat();
    boolean may = own ? rules.jokers().own() : rules.jokers().others();
    if (!may || exposure.jokers() == 0 || tiles.held(exposure.kind()) == 0) {
      return 0;
    }
    after.set(tiles);
    after.remove(exposure.kind());
    after.add(Tile.JOKER);
    int jokers = shown(view) + (more == null ? 0 : more.jokers()) - (own ? 1 : 0);
    return exchanged() * unit(reach, after, jokers);
  }

  /**
   * An exchange to make before declaring, in a turn that began with a claim.
   *
   * @param view what the seat knows, in its turn, its hand complete
   * @return the exchange, or null where declaring now pays as much
   */
  TurnChoice exchange(SeatView view) {
    if (!view.claimedThisTurn() || view.exchangesThisTurn() > 0) {
      return null;
    }
    look(view);
    Reach reach = view.reach(view.seat());
    double most = onDiscard * unit(reach, rack, shown(view));
    TurnChoice best = null;
    for (int owner = 0; owner < Seats.COUNT; owner++) {
      for (int index = 0; index < view.exposures(owner).size(); index++) {
        if (LegalMoves.mayExchange(view, owner, index)) {
          double paid = redeemed(view, rack, reach, view.exposures(owner).get(index), owner, null);
          if (paid > most) {
            most = paid;
            best = TurnChoice.exchange(owner, index);
          }
        }
      }
    }
    return best;
  }

  private double exchanged() {
    return LOSERS * (rules.win().exchangeSelfDrawn() ? rules.score().selfDrawn() : 1);
  }

  private static int shown(SeatView view) {
    int jokers = 0;
    for (Exposure exposure : view.exposures(view.seat())) {
      jokers += exposure.jokers();
    }
    return jokers;
  }

  /** What the dearest line pays on which the tiles are complete, for one payer; 0 for none. */
  private int unit(Reach reach, Rack tiles, int shown) {
    meter.hold(tiles);
    int most = 0;
    for (int at = 0; at < reach.size(); at++) {
      if (meter.away(reach, at) == 0) {
        most =
            Math.max(
                most, settlement.unit(reach.hands().line(reach.line(at)), tiles.jokers() + shown));
      }
    }
    return most;
  }
}
