package org.tallywall.strategies.player;

import org.tallywall.core.hand.Reach;
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
import org.tallywall.strategies.hand.Nearness;

/**
 * Always heads for the line that is fewest tiles away, and looks at nobody else.
 *
 * <ul>
 *   <li><em>Aim</em>: the nearest living line; of equals the one with more ways, then the dearer.
 *   <li><em>Passes</em>: the three tiles that are spared most easily. Where blind passing is
 *       allowed, only tiles that the line aimed at does not want; the rest goes on blind. Stops the
 *       passes with fewer than three such tiles, and offers as many across, three at most.
 *   <li><em>Claims</em>: mahjong always. An exposure when it brings the hand nearer; with as many
 *       naturals as it holds, and of several sizes the one that brings it nearest.
 *   <li><em>Jokers</em>: redeems whenever the hand is no further for it. Throws a joker only when
 *       the rack holds nothing else.
 *   <li><em>Discards</em>: the tile spared most easily; of equals the one of which most are out.
 * </ul>
 *
 * <p>Left out: chances, the wall, opponents, danger. Ties never draw lots: the same view gives the
 * same answer whatever the random numbers.
 */
public final class NearestPlayer implements Player {
  private static final int PASSED = 3;

  private final Nearness nearness = new Nearness();
  private final Nearness other = new Nearness();
  private final Rack rack = new Rack();
  private ClaimChoice best;
  private int bestAway;
  private int bestWays;

  /** A player. */
  public NearestPlayer() {}

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return true;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    nearness.look(view);
    int most = LegalMoves.blindMost(view.table().rules(), step);
    int[] own = new int[PASSED];
    int count = 0;
    while (count < PASSED) {
      int kind = nearness.mostSpare(true);
      if (count >= PASSED - most && !spare(kind)) {
        break;
      }
      own[count++] = kind;
      nearness.take(kind);
    }
    return PassChoice.of(java.util.Arrays.copyOf(own, count));
  }

  private boolean spare(int kind) {
    return kind >= 0 && kind != Tile.JOKER && nearness.stranger(kind);
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return strangers(view) < PASSED;
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return strangers(view);
  }

  /** Tiles that the line aimed at does not want, counted up to three. */
  private int strangers(SeatView view) {
    nearness.look(view);
    int count = 0;
    int kind = nearness.mostSpare(false);
    while (count < PASSED && spare(kind)) {
      count++;
      nearness.take(kind);
      kind = nearness.mostSpare(false);
    }
    return count;
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    nearness.look(view);
    int[] tiles = new int[number];
    for (int at = 0; at < number; at++) {
      tiles[at] = nearness.mostSpare(true);
      nearness.take(tiles[at]);
    }
    return tiles;
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    if (view.complete()) {
      return ClaimChoice.mahjong();
    }
    best = ClaimChoice.nothing();
    if (view.offered() != Tile.JOKER) {
      nearness.glance(view);
      bestAway = nearness.least();
      bestWays = 0;
      boolean wanted = nearness.wantsNow(view.offered());
      for (int size = 3; size <= 6 && wanted; size++) {
        consider(view, size);
      }
    }
    return best;
  }

  private void consider(SeatView view, int size) {
    int tile = view.offered();
    int naturals = Math.min(view.held(tile), size - 1);
    int jokers = size - 1 - naturals;
    if (!LegalMoves.mayExpose(view, tile, size, jokers)) {
      return;
    }
    view.copyRack(rack);
    rack.remove(tile, naturals);
    rack.remove(Tile.JOKER, jokers);
    Reach left = view.reachWith(Exposure.of(tile, size, jokers));
    other.glance(view, rack, left);
    boolean nearer = other.least() < bestAway;
    boolean asNear =
        best != ClaimChoice.nothing() && other.least() == bestAway && other.ways() > bestWays;
    if (nearer || asNear) {
      best = ClaimChoice.expose(size, jokers);
      bestAway = other.least();
      bestWays = other.ways();
    }
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    if (view.complete()) {
      return TurnChoice.mahjong();
    }
    nearness.look(view);
    TurnChoice exchange = exchange(view);
    return exchange == null ? TurnChoice.discard(nearness.mostSpare(true)) : exchange;
  }

  private TurnChoice exchange(SeatView view) {
    boolean noneLaidOpen = view.faceUp(Tile.JOKER) == view.discarded(Tile.JOKER);
    if (noneLaidOpen) {
      return null;
    }
    for (int owner = 0; owner < Seats.COUNT; owner++) {
      for (int index = 0; index < view.exposures(owner).size(); index++) {
        if (LegalMoves.mayExchange(view, owner, index)) {
          view.copyRack(rack);
          rack.remove(view.exposures(owner).get(index).kind());
          rack.add(Tile.JOKER);
          other.glance(view, rack, view.reach(view.seat()));
          if (other.least() <= nearness.least()) {
            return TurnChoice.exchange(owner, index);
          }
        }
      }
    }
    return null;
  }

  @Override
  public int aim(SeatView view) {
    nearness.glance(view);
    return nearness.aim();
  }
}
