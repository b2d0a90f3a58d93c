package org.tallywall.experiments.benchmarks;

import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * The baseline of the scans: counts of kinds in arrays, and the formula written down as it stands.
 */
final class CountsMeter {
  private final int[][] total;
  private final int[][] strict;

  /**
   * Counts of all hands of a card.
   *
   * @param hands the card's hands
   */
  CountsMeter(ConcreteHands hands) {
    total = new int[hands.size()][Tile.NATURALS];
    strict = new int[hands.size()][Tile.NATURALS];
    for (int at = 0; at < hands.size(); at++) {
      ConcreteHand hand = hands.hand(at);
      boolean jokers = hands.line(hands.lineOf(at)).terms().jokers();
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        total[at][kind] = hand.total(kind);
        strict[at][kind] = jokers ? hand.loose(kind) : hand.total(kind);
      }
    }
  }

  /**
   * How far a rack is from the nearest hand.
   *
   * @param rack a rack without exposures
   * @return 0 to 14
   */
  int least(Rack rack) {
    int best = 14;
    for (int at = 0; at < total.length; at++) {
      int matched = 0;
      int missing = 0;
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        int held = rack.held(kind);
        matched += Math.min(held, total[at][kind]);
        missing += Math.max(0, strict[at][kind] - held);
      }
      best = Math.min(best, Math.max(missing, 14 - matched - rack.jokers()));
    }
    return best;
  }
}
