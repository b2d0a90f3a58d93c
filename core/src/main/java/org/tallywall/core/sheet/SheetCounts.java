package org.tallywall.core.sheet;

import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;

/** How many tiles lie where at the moment of a sheet. */
final class SheetCounts {
  private static final int TILES = 13;
  private static final int DEALT = 53;

  private SheetCounts() {}

  /** Tiles of a seat, exposures among them. */
  static int tiles(SheetDraft draft, int seat) {
    boolean more =
        draft.moment.inPlay()
            ? draft.moment instanceof Moment.Turn && seat == draft.seat
            : seat == Seats.EAST;
    return more ? TILES + 1 : TILES;
  }

  /** Concealed tiles of the three others. */
  static int others(SheetDraft draft) {
    int sum = 0;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      sum += seat == draft.seat ? 0 : tiles(draft, seat) - draft.exposed(seat);
    }
    return sum;
  }

  /** Tiles left in the wall, as said or as they follow. */
  static int wall(SheetDraft draft, TableSetup setup) {
    if (draft.wall != SheetDraft.NONE) {
      return draft.wall;
    }
    return draft.says("unseen")
        ? draft.unseenTiles() - others(draft)
        : setup.rules().tiles().size() - DEALT;
  }

  /** Discards that must lie on the table, the tile on offer left aside. */
  static int discards(SheetDraft draft, TableSetup setup) {
    int tiles = setup.rules().tiles().size() - wall(draft, setup);
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      tiles -= tiles(draft, seat);
    }
    return tiles - (draft.moment instanceof Moment.Offer ? 1 : 0);
  }
}
