package org.tallywall.experiments.benchmarks;

import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * The baseline of the games: a player as one would write it first. It tries every discard and every
 * three tiles to pass and measures each by a full scan of counts in arrays. It lays nothing open
 * and redeems nothing, so it does less than {@code nearest} in a game.
 */
final class CountsPlayer implements Player {
  private final CountsMeter meter;
  private final Rack rack = new Rack();

  /**
   * A player.
   *
   * @param hands the card's hands
   */
  CountsPlayer(ConcreteHands hands) {
    meter = new CountsMeter(hands);
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return true;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    view.copyRack(rack);
    return PassChoice.of(bestThree());
  }

  /**
   * The three tiles without which the rack is nearest.
   *
   * @param tiles the rack
   * @return kinds of three naturals
   */
  int[] bestThree(Rack tiles) {
    rack.set(tiles);
    return bestThree();
  }

  private int[] bestThree() {
    int[] tiles = rack.tiles();
    int naturals = tiles.length - rack.jokers();
    int[] best = null;
    int least = Integer.MAX_VALUE;
    for (int a = 0; a < naturals; a++) {
      for (int b = a + 1; b < naturals; b++) {
        for (int c = b + 1; c < naturals; c++) {
          int away = without(tiles[a], tiles[b], tiles[c]);
          if (away < least) {
            least = away;
            best = new int[] {tiles[a], tiles[b], tiles[c]};
          }
        }
      }
    }
    return best;
  }

  private int without(int... tiles) {
    for (int tile : tiles) {
      rack.remove(tile);
    }
    int away = meter.least(rack);
    for (int tile : tiles) {
      rack.add(tile);
    }
    return away;
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return true;
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return 0;
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    throw new IllegalStateException("nothing was offered");
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    return view.complete() ? ClaimChoice.mahjong() : ClaimChoice.nothing();
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    if (view.complete()) {
      return TurnChoice.mahjong();
    }
    view.copyRack(rack);
    int best = Tile.JOKER;
    int least = Integer.MAX_VALUE;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (rack.held(kind) > 0) {
        int away = without(kind);
        if (away < least) {
          least = away;
          best = kind;
        }
      }
    }
    return TurnChoice.discard(best);
  }
}
