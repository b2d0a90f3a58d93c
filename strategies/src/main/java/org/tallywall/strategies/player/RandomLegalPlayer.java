package org.tallywall.strategies.player;

import java.util.List;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Plays any legal move, all equally likely: the yardstick at the lower end. A complete hand it
 * declares, since declaring is among its legal moves, only when the lot falls on it; so it wins
 * hardly ever. It aims at no line.
 *
 * <p>Passes: the number of tiles passed blind is drawn first, then the tiles, each tile of the rack
 * alike. The stop question and courtesy numbers are drawn evenly too.
 */
public final class RandomLegalPlayer implements Player {
  private static final int PASSED = 3;

  private final Rack rack = new Rack();

  /** A player. */
  public RandomLegalPlayer() {}

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return random.below(2) == 0;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    int blind = random.below(LegalMoves.blindMost(view.table().rules(), step) + 1);
    return PassChoice.of(tiles(view, PASSED - blind, random));
  }

  private int[] tiles(SeatView view, int number, RandomStream random) {
    view.copyRack(rack);
    if (!LegalMoves.passable(view, Tile.JOKER)) {
      rack.remove(Tile.JOKER, rack.jokers());
    }
    int[] all = rack.tiles();
    random.shuffle(all, all.length);
    return java.util.Arrays.copyOf(all, number);
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return random.below(2) == 0;
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return random.below(PASSED + 1);
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return tiles(view, number, random);
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    List<ClaimChoice> exposures = LegalMoves.exposures(view);
    int pick = random.below(exposures.size() + (view.complete() ? 2 : 1));
    if (pick < exposures.size()) {
      return exposures.get(pick);
    }
    return pick == exposures.size() ? ClaimChoice.nothing() : ClaimChoice.mahjong();
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    List<TurnChoice> choices = LegalMoves.turn(view);
    return choices.get(random.below(choices.size()));
  }
}
