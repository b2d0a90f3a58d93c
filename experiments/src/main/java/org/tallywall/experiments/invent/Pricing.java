package org.tallywall.experiments.invent;

import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * Prices a line by how hard it is to make, in the steps and within the bounds of printed cards (25
 * to 75, rule 8.6): dearer with few ways, many singles and pairs, groups that need jokers, or when
 * it must be kept concealed.
 */
final class Pricing {
  private static final int LEAST = 25;
  private static final int MOST = 75;
  private static final int STEP = 5;
  private static final int COUPLES = 50;
  private static final int FEW_WAYS = 6;
  private static final int MANY_LOOSE = 5;
  private static final int ALL = 14;

  private Pricing() {}

  static int value(Line line, boolean concealed) {
    ConcreteHand hand = line.hands().get(0);
    int ways = line.hands().size();
    if (loose(hand) == ALL) {
      return COUPLES + (ways <= 2 * FEW_WAYS ? STEP : 0) + (ways <= FEW_WAYS ? STEP : 0);
    }
    int value = LEAST;
    value += ways <= FEW_WAYS ? STEP : 0;
    value += loose(hand) >= MANY_LOOSE ? STEP : 0;
    value += concealed ? STEP : 0;
    value += 2 * STEP * hand.jokersNeeded(TileSet.USUAL);
    return Math.min(MOST, value);
  }

  /**
   * The most ways that a line with such hands may have: few where the hands are easy to make, lest
   * one line win half the games.
   */
  static int mostWays(ConcreteHand hand) {
    int largest = 0;
    for (int at = 0; at < hand.groups(); at++) {
      largest = Math.max(largest, hand.groupSize(at));
    }
    int singles = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      singles += hand.loose(kind) % 2;
    }
    if (largest == 3) {
      return singles >= 2 ? 9 : 18;
    }
    return largest > 0 && singles >= 3 ? 18 : 54;
  }

  /** Tiles of a hand that stand in singles and pairs. */
  static int loose(ConcreteHand hand) {
    int loose = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      loose += hand.loose(kind);
    }
    return loose;
  }
}
