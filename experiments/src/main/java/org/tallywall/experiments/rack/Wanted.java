package org.tallywall.experiments.rack;

import java.util.List;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * What a rack still wants for one hand, after its naturals and its jokers have been put in place.
 *
 * <p>Naturals fill loose places first. The rack's jokers then stand where naturals are hardest to
 * get: in the group that lacks most, one tile after the other, the earlier kind first among equals.
 */
final class Wanted {
  private final Rack natural = new Rack();
  private final Rack open = new Rack();

  /**
   * Works out what is wanted.
   *
   * @param rack the concealed tiles
   * @param exposures the exposures, all of them groups of the hand
   * @param hand the hand
   * @param jokersAllowed whether its line takes jokers
   */
  Wanted(Rack rack, List<Exposure> exposures, ConcreteHand hand, boolean jokersAllowed) {
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int total = hand.total(kind) - exposed(exposures, kind);
      int strict = jokersAllowed ? hand.loose(kind) : total;
      int lackingStrict = Math.max(0, strict - rack.held(kind));
      natural.add(kind, lackingStrict);
      open.add(kind, Math.max(0, total - rack.held(kind)) - lackingStrict);
    }
    for (int joker = 0; joker < rack.jokers() && open.total() > 0; joker++) {
      open.remove(mostWanted());
    }
  }

  private static int exposed(List<Exposure> exposures, int kind) {
    return exposures.stream()
        .filter(exposure -> exposure.kind() == kind)
        .mapToInt(Exposure::size)
        .sum();
  }

  private int mostWanted() {
    int most = 0;
    for (int kind = 1; kind < Tile.NATURALS; kind++) {
      most = open.held(kind) > open.held(most) ? kind : most;
    }
    return most;
  }

  /** Tiles that must be natural. */
  Rack natural() {
    return natural;
  }

  /** Tiles that may be jokers. */
  Rack open() {
    return open;
  }
}
