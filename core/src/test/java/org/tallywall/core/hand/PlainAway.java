package org.tallywall.core.hand;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * How far a rack is from a hand, found by trying every way to put its tiles and jokers into the
 * places of the hand: no formula, no bits.
 */
final class PlainAway {
  private final List<int[]> groups = new ArrayList<>();
  private final int[] loose = new int[Tile.NATURALS];
  private final boolean jokersAllowed;
  private int places;

  private PlainAway(ConcreteHand hand, List<Exposure> exposures, boolean jokersAllowed) {
    this.jokersAllowed = jokersAllowed;
    for (int at = 0; at < hand.groups(); at++) {
      groups.add(new int[] {hand.groupKind(at), hand.groupSize(at)});
      places += hand.groupSize(at);
    }
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      loose[kind] = hand.loose(kind);
      places += loose[kind];
    }
    for (Exposure exposure : exposures) {
      int[] laid =
          groups.stream()
              .filter(g -> g[0] == exposure.kind() && g[1] == exposure.size())
              .findFirst()
              .orElseThrow();
      groups.remove(laid);
      places -= exposure.size();
    }
  }

  /** The distance; the exposures must be groups of the hand. */
  static int of(ConcreteHand hand, Rack rack, List<Exposure> exposures, boolean jokersAllowed) {
    PlainAway plain = new PlainAway(hand, exposures, jokersAllowed);
    return plain.places - plain.mostPlaced(rack.copy(), 0);
  }

  /** The most tiles of a rack that find a place, naturals of each kind tried in every split. */
  private int mostPlaced(Rack rack, int group) {
    if (group == groups.size()) {
      int placed = 0;
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        placed += Math.min(rack.held(kind), loose[kind]);
      }
      return placed;
    }
    int kind = groups.get(group)[0];
    int size = groups.get(group)[1];
    int best = 0;
    for (int naturals = 0; naturals <= Math.min(size, rack.held(kind)); naturals++) {
      int most = jokersAllowed ? Math.min(size - naturals, rack.jokers()) : 0;
      for (int jokers = 0; jokers <= most; jokers++) {
        Rack rest = rack.copy();
        rest.remove(kind, naturals);
        rest.remove(Tile.JOKER, jokers);
        best = Math.max(best, naturals + jokers + mostPlaced(rest, group + 1));
      }
    }
    return best;
  }
}
