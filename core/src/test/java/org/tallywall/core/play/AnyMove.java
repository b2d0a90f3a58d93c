package org.tallywall.core.play;

import java.util.List;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Makes any legal move by lot, and checks that there is one whenever it is asked. */
public final class AnyMove implements Player {
  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return random.below(2) == 0;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    int blind = random.below(LegalMoves.blindMost(view.table().rules(), step) + 1);
    return PassChoice.of(some(view, 3 - blind, random));
  }

  private static int[] some(SeatView view, int number, RandomStream random) {
    Rack rack = new Rack();
    view.copyRack(rack);
    if (!LegalMoves.passable(view, Tile.JOKER)) {
      rack.remove(Tile.JOKER, rack.jokers());
    }
    int[] tiles = rack.tiles();
    random.shuffle(tiles, tiles.length);
    return java.util.Arrays.copyOf(tiles, number);
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return random.below(5) == 0;
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return random.below(4);
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return some(view, number, random);
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    List<ClaimChoice> claims = LegalMoves.exposures(view);
    if (claims.isEmpty() && !view.complete()) {
      throw new AssertionError("asked about a claim, but none is legal");
    }
    int pick = random.below(claims.size() + (view.complete() ? 3 : 1));
    return pick < claims.size()
        ? claims.get(pick)
        : pick == claims.size() ? ClaimChoice.nothing() : ClaimChoice.mahjong();
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    List<TurnChoice> choices = LegalMoves.turn(view);
    if (choices.isEmpty()) {
      throw new AssertionError("on turn, but no move is legal");
    }
    return choices.get(random.below(choices.size()));
  }
}
