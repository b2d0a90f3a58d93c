package org.tallywall.strategies.reason;

import java.util.ArrayList;
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

  /**
   * Adds whether a tile is one of hers, for every player who shows two exposures or more; in short
   * where nobody who shows any can want it.
   */
  void explain(SeatView view, int tile, List<Reason> into) {
    List<Reason> feared = new ArrayList<>();
    int showing = 0;
    int wanting = 0;
    for (int other = 0; other < Seats.COUNT && tile < Tile.NATURALS; other++) {
      int shown = view.exposures(other).size();
      if (other != view.seat() && shown > 0 && !view.dead(other)) {
        Reason reason = hers(view, other, tile);
        showing++;
        wanting += reason instanceof Reason.HerTile ? 1 : 0;
        if (shown >= FEARED) {
          feared.add(reason);
        }
      }
    }
    if (showing > 0 && wanting == 0) {
      into.add(new Reason.NobodyWants(showing));
    } else {
      into.addAll(feared);
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
