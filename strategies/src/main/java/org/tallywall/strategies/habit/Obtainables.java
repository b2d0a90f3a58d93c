package org.tallywall.strategies.habit;

import org.tallywall.core.play.SeatView;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Tile;

/** How many tiles of each kind a seat can have at most, as far as face-up tiles tell. */
final class Obtainables {
  private final int[] counts = new int[Tile.KINDS];

  /**
   * Counts. Jokers laid open can be redeemed; a tile that another offers can be had.
   *
   * @param view what the seat knows
   * @return by kind; the same array each time
   */
  int[] count(SeatView view) {
    TableRules rules = view.table().rules();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      int gone = kind == Tile.JOKER ? view.discarded(kind) : view.faceUp(kind);
      counts[kind] = rules.tiles().copies(kind) - gone;
    }
    if (view.offered() >= 0 && view.offeredBy() != view.seat()) {
      counts[view.offered()]++;
    }
    return counts;
  }
}
