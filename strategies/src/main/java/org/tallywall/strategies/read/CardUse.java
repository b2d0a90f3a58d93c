package org.tallywall.strategies.read;

import java.util.Arrays;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.tile.Tile;

/**
 * How much the card uses each tile: the share of a line's ways that want it, summed over the lines.
 * Before anything is exposed this is all that tells how dangerous a tile will be.
 */
public final class CardUse {
  private final double[] use = new double[Tile.NATURALS];
  private ConcreteHands counted;

  /** Nothing counted yet. */
  public CardUse() {}

  /**
   * Counts a card, once.
   *
   * @param hands its hands
   */
  public void count(ConcreteHands hands) {
    if (hands != counted) {
      counted = hands;
      Arrays.fill(use, 0);
      for (int at = 0; at < hands.size(); at++) {
        double share = 1.0 / hands.ways(hands.lineOf(at));
        for (int kind = 0; kind < Tile.NATURALS; kind++) {
          use[kind] += hands.hand(at).total(kind) > 0 ? share : 0;
        }
      }
    }
  }

  /**
   * How many lines use a tile, a line that uses it in some of its ways counted in part.
   *
   * @param kind a natural kind
   * @return 0 or more
   */
  public double of(int kind) {
    return use[kind];
  }
}
