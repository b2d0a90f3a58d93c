package org.tallywall.strategies.player;

import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.habit.OverlookHabit;
import org.tallywall.strategies.hand.OneTarget;
import org.tallywall.strategies.setting.SettingValues;

/**
 * Plays like somebody in her first season: sees one way to make one line and nothing else.
 *
 * <ul>
 *   <li><em>Aim</em>: the nearest hand, the first on the card of equals; none in reserve.
 *   <li><em>Passes</em>: what that hand does not want, then whatever comes first; never blind,
 *       never stops the passes, three across.
 *   <li><em>Claims</em>: mahjong, and whatever that hand lacks, as soon as it may be laid open and
 *       the hand is no further for it; of several sizes the largest.
 *   <li><em>Jokers</em>: redeems when the hand is nearer for it.
 *   <li><em>Discards</em>: what that hand does not want, the first in the order of kinds. Never
 *       defends.
 * </ul>
 *
 * <p>Lapses may be set.
 */
public final class NewcomerPlayer implements Player {
  private static final int PASSED = 3;

  private final OneTarget target = new OneTarget();
  private final OneTarget then = new OneTarget();
  private final Rack rack = new Rack();
  private final OverlookHabit overlooks;

  /**
   * A player.
   *
   * @param values its settings
   */
  public NewcomerPlayer(SettingValues values) {
    overlooks = new OverlookHabit(values);
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return !overlooks.win(random);
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    return PassChoice.of(give(view, PASSED));
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return false;
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return PASSED;
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return give(view, number);
  }

  private int[] give(SeatView view, int number) {
    target.look(view);
    view.copyRack(rack);
    int[] given = new int[number];
    for (int at = 0; at < number; at++) {
      given[at] = spare(view);
      rack.remove(given[at]);
    }
    return given;
  }

  /** What is left of the rack and not wanted; else the first tile, a joker last of all. */
  private int spare(SeatView view) {
    int any = Tile.JOKER;
    for (int kind = Tile.NATURALS - 1; kind >= 0; kind--) {
      any = rack.held(kind) > 0 ? kind : any;
    }
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int used = view.held(kind) - target.spare(kind);
      if (rack.held(kind) > used) {
        return kind;
      }
    }
    return any;
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    if (view.complete()) {
      return overlooks.win(random) ? ClaimChoice.nothing() : ClaimChoice.mahjong();
    }
    if (overlooks.call(random) || view.offered() == Tile.JOKER) {
      return ClaimChoice.nothing();
    }
    target.look(view);
    ClaimChoice best = ClaimChoice.nothing();
    for (int size = 3; size <= 6 && target.wants(view.offered()); size++) {
      int naturals = Math.min(view.held(view.offered()), size - 1);
      int jokers = size - 1 - naturals;
      if (LegalMoves.mayExpose(view, view.offered(), size, jokers)
          && awayAfter(view, size, jokers) <= target.least()) {
        best = ClaimChoice.expose(size, jokers);
      }
    }
    return best;
  }

  private int awayAfter(SeatView view, int size, int jokers) {
    view.copyRack(rack);
    rack.remove(view.offered(), size - 1 - jokers);
    rack.remove(Tile.JOKER, jokers);
    then.look(view, rack, view.reachWith(Exposure.of(view.offered(), size, jokers)));
    return then.least() == HandMeter.NONE ? HandMeter.NONE + 1 : then.least();
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    if (view.complete() && !overlooks.win(random)) {
      return TurnChoice.mahjong();
    }
    target.look(view);
    TurnChoice exchange = exchange(view);
    if (exchange != null && !overlooks.exchange(random)) {
      return exchange;
    }
    view.copyRack(rack);
    return TurnChoice.discard(spare(view));
  }

  private TurnChoice exchange(SeatView view) {
    for (int owner = 0; owner < Seats.COUNT; owner++) {
      for (int index = 0; index < view.exposures(owner).size(); index++) {
        if (LegalMoves.mayExchange(view, owner, index)) {
          view.copyRack(rack);
          rack.remove(view.exposures(owner).get(index).kind());
          rack.add(Tile.JOKER);
          then.look(view, rack, view.reach(view.seat()));
          if (then.least() < target.least()) {
            return TurnChoice.exchange(owner, index);
          }
        }
      }
    }
    return null;
  }

  @Override
  public int aim(SeatView view) {
    target.look(view);
    return target.line();
  }
}
