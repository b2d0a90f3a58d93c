package org.tallywall.core.sheet;

import java.util.List;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/** Small things about the words of faults. */
final class SheetWords {
  private SheetWords() {}

  static String exposures(List<Exposure> exposures) {
    return String.join(" ", exposures.stream().map(Exposure::toString).toList());
  }

  static String tiles(List<Integer> kinds) {
    return String.join(" ", kinds.stream().map(Tile::symbol).toList());
  }
}
