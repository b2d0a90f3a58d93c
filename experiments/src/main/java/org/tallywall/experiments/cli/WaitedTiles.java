package org.tallywall.experiments.cli;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.tile.NotationException;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.core.tile.TileText;
import org.tallywall.experiments.error.WrongInputException;

/**
 * The kinds somebody waits for, with how many of each were seen.
 *
 * @param unseen how many tiles of all these kinds are unseen
 * @param seen how many were seen
 * @param said for each kind how many are unseen, in words
 */
record WaitedTiles(int unseen, int seen, List<String> said) {
  WaitedTiles {
    said = List.copyOf(said);
  }

  static WaitedTiles read(String tiles, String seenTiles, TileSet set) {
    Rack waited = rack("the tiles you wait for", tiles);
    Rack seen = rack("--seen", seenTiles == null ? "" : seenTiles);
    int all = 0;
    int unseen = 0;
    List<String> said = new ArrayList<>();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      String name = Tile.symbol(kind);
      int held = seen.held(kind);
      if (waited.held(kind) > 1) {
        throw new WrongInputException("name %s once among the tiles you wait for".formatted(name));
      } else if (waited.held(kind) == 0 && held > 0) {
        throw new WrongInputException(
            "--seen has %s, which you do not wait for; name the tiles of your kinds alone"
                .formatted(name));
      } else if (held > set.copies(kind)) {
        throw new WrongInputException(
            "--seen has %s of %s; there are only %s".formatted(held, name, set.copies(kind)));
      } else if (waited.held(kind) > 0) {
        all += held;
        unseen += set.copies(kind) - held;
        said.add("%s (%s of %s)".formatted(name, set.copies(kind) - held, set.copies(kind)));
      }
    }
    if (said.isEmpty()) {
      throw new WrongInputException("say which tiles you wait for, as in \"5b 8b\"");
    }
    return new WaitedTiles(unseen, all, said);
  }

  private static Rack rack(String what, String text) {
    try {
      return TileText.rack(text);
    } catch (NotationException wrong) {
      throw new WrongInputException(what + ": " + wrong.getMessage());
    }
  }
}
