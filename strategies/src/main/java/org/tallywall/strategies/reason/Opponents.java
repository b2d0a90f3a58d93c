package org.tallywall.strategies.reason;

import java.util.List;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/** What the exposures of the others leave to them, by the tiles that a seat can see. */
final class Opponents {
  private static final int FEARED = 2;

  private final HandMeter meter = new HandMeter();
  private final Rack nothing = new Rack();
  private final int[] obtainable = new int[Tile.KINDS];

  /** Adds whether a tile is one of hers, for every player who shows two exposures or more. */
  void explain(SeatView view, int tile, List<Reason> into) {
    for (int other = 0; other < Seats.COUNT; other++) {
      boolean feared = view.exposures(other).size() >= FEARED && !view.dead(other);
      if (other != view.seat() && feared && tile < Tile.NATURALS) {
        into.add(hers(view, other, tile));
      }
    }
  }

  private Reason hers(SeatView view, int other, int tile) {
    TileSet set = view.table().rules().tiles();
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      obtainable[kind] = set.copies(kind) - view.faceUp(kind) - view.held(kind);
    }
    obtainable[tile]++;
    obtainable[Tile.JOKER] = set.jokers() - view.discarded(Tile.JOKER) - view.held(Tile.JOKER);
    meter.obtainable(obtainable);
    meter.hold(nothing);
    Reach reach = view.reach(other);
    int lines = 0;
    int last = -1;
    boolean wanted = false;
    for (int hand = 0; hand < reach.size(); hand++) {
      if (!meter.dead(reach, hand)) {
        lines += reach.line(hand) == last ? 0 : 1;
        last = reach.line(hand);
        wanted |= reach.wants(hand, tile, 1);
      }
    }
    return wanted ? new Reason.HerTile(other, lines) : new Reason.NotHers(other, lines);
  }
}
