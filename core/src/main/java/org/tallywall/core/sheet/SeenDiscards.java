package org.tallywall.core.sheet;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * The discards on the table as a seat knows them, without a tile on offer.
 *
 * @param kinds their kinds, in the order thrown where that is known, else ascending
 * @param inOrder whether the order is known
 */
public record SeenDiscards(List<Integer> kinds, boolean inOrder) {
  /**
   * Copies the list.
   *
   * @param kinds their kinds
   * @param inOrder whether the order is known
   */
  public SeenDiscards {
    kinds = List.copyOf(kinds);
  }

  /**
   * What a seat knows.
   *
   * @param view what it knows, in play
   * @return the discards; where all of them are in order, they are those of the view one by one
   */
  public static SeenDiscards of(SeatView view) {
    int offered = view.offered();
    Rack thrown = new Rack();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      thrown.add(kind, view.discarded(kind) - (kind == offered ? 1 : 0));
    }
    int listed = view.discards() - (offered >= 0 ? 1 : 0);
    List<Integer> kinds = new ArrayList<>();
    boolean inOrder = listed == thrown.total();
    for (int at = 0; at < listed && inOrder; at++) {
      kinds.add(view.discardTile(at));
    }
    if (!inOrder) {
      for (int kind : thrown.tiles()) {
        kinds.add(kind);
      }
    }
    return new SeenDiscards(kinds, inOrder);
  }
}
