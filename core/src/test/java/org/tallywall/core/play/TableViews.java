package org.tallywall.core.play;

import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.TileSet;

/** The view of seat 1 right after a deal in which it got a given rack. */
final class TableViews {
  private final GameState state =
      new GameState(new TableSetup(TestTable.CARD, TableRules.STANDARD));

  TableViews(String rack) {
    state.begin(new StackedWall(TileSet.USUAL).rack(1, rack).deal());
  }

  SeatView view() {
    return state.views[1];
  }
}
