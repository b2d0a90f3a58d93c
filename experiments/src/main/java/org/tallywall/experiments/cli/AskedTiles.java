package org.tallywall.experiments.cli;

import java.util.List;
import java.util.StringJoiner;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;

/** The tiles of a position read back, so that a slip in typing them is seen. */
final class AskedTiles {
  private AskedTiles() {}

  /** As in {@code rack 1128b 33c FF J; exposed 0 444dJ; exposed 2 NNNN}. */
  static String of(SeatView view) {
    Rack rack = new Rack();
    view.copyRack(rack);
    StringJoiner tiles = new StringJoiner("; ");
    tiles.add("rack " + rack);
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      List<String> shown = view.exposures(seat).stream().map(Exposure::toString).toList();
      if (!shown.isEmpty()) {
        tiles.add("exposed " + seat + " " + String.join(" ", shown));
      }
    }
    return tiles.toString();
  }
}
