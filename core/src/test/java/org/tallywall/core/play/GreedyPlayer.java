package org.tallywall.core.play;

import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Goes for the nearest hand, claims and redeems where it comes no further, and never draws lots, so
 * that tests can tell its choices from the engine's luck.
 */
public final class GreedyPlayer implements Player {
  private final HandMeter meter = new HandMeter();
  private final Rack rack = new Rack();

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return true;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    int blind = code(view) % (LegalMoves.blindMost(view.table().rules(), step) + 1);
    return PassChoice.of(spare(view, 3 - blind));
  }

  /** Some number that the rack alone decides. */
  private int code(SeatView view) {
    view.copyRack(rack);
    return Math.abs(rack.hashCode() % 1000);
  }

  private int[] spare(SeatView view, int number) {
    view.copyRack(rack);
    int[] tiles = new int[number];
    for (int at = 0; at < number; at++) {
      tiles[at] = mostSpare(view.reach(view.seat()));
      rack.remove(tiles[at]);
    }
    return tiles;
  }

  /** The natural without which the rack is nearest to a hand; a joker where there is none. */
  private int mostSpare(Reach reach) {
    int best = Tile.JOKER;
    int least = HandMeter.NONE + 1;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (rack.held(kind) > 0) {
        rack.remove(kind);
        meter.hold(rack);
        rack.add(kind);
        int away = meter.least(reach);
        if (away < least) {
          least = away;
          best = kind;
        }
      }
    }
    return best;
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return code(view) % 7 == 0;
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return code(view) % 4;
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return spare(view, number);
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    if (view.complete()) {
      return ClaimChoice.mahjong();
    }
    int now = away(view, view.reach(view.seat()), 0, 0, 0);
    for (ClaimChoice claim : LegalMoves.exposures(view)) {
      ClaimChoice.Expose laid = (ClaimChoice.Expose) claim;
      boolean joker = view.offered() == Tile.JOKER;
      int kind = joker ? laid.kind() : view.offered();
      Exposure group = new Exposure(kind, laid.size(), laid.jokers() + (joker ? 1 : 0));
      int naturals = laid.size() - 1 - laid.jokers();
      if (away(view, view.reachWith(group), kind, naturals, laid.jokers()) < now) {
        return claim;
      }
    }
    return ClaimChoice.nothing();
  }

  private int away(SeatView view, Reach reach, int kind, int naturals, int jokers) {
    view.copyRack(rack);
    rack.remove(kind, naturals);
    rack.remove(Tile.JOKER, jokers);
    meter.hold(rack);
    return meter.least(reach);
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    if (view.complete()) {
      return TurnChoice.mahjong();
    }
    for (TurnChoice choice : LegalMoves.turn(view)) {
      if (choice instanceof TurnChoice.Exchange exchange && nearer(view, exchange)) {
        return choice;
      }
    }
    return TurnChoice.discard(spare(view, 1)[0]);
  }

  private boolean nearer(SeatView view, TurnChoice.Exchange exchange) {
    Reach reach = view.reach(view.seat());
    int now = away(view, reach, 0, 0, 0);
    view.copyRack(rack);
    rack.remove(view.exposures(exchange.owner()).get(exchange.exposure()).kind());
    rack.add(Tile.JOKER);
    meter.hold(rack);
    return meter.least(reach) <= now;
  }
}
