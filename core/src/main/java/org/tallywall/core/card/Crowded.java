package org.tallywall.core.card;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * A line of which every hand has several groups of one kind that ask for more tiles than there are,
 * so that it is never made without jokers. Mostly a letter or a number is wrong. A quint asks for
 * more than there are by itself, and nobody writes one by mistake.
 *
 * @param hand the hand that comes nearest to being made without
 * @param jokers how many jokers the line needs at least
 */
record Crowded(ConcreteHand hand, int jokers) {
  /**
   * Looks at the hands of a line.
   *
   * @param hands those that can be made
   * @return what is odd, or nothing where some hand has room for all its groups
   */
  static Optional<Crowded> of(List<ConcreteHand> hands) {
    ConcreteHand best = null;
    int least = Integer.MAX_VALUE;
    int jokers = Integer.MAX_VALUE;
    for (ConcreteHand hand : hands) {
      int crowd = 0;
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        crowd += crowd(hand, kind);
      }
      if (crowd < least) {
        least = crowd;
        best = hand;
      }
      jokers = Math.min(jokers, hand.jokersNeeded(TileSet.USUAL));
    }
    return best == null || least == 0 ? Optional.empty() : Optional.of(new Crowded(best, jokers));
  }

  /** Tiles of a kind that are missing because several groups ask for it. */
  private static int crowd(ConcreteHand hand, int kind) {
    int copies = TileSet.USUAL.copies(kind);
    int missing = Math.max(0, hand.total(kind) - copies);
    for (int at = 0; missing > 0 && at < hand.groups(); at++) {
      missing -= hand.groupKind(at) == kind ? Math.max(0, hand.groupSize(at) - copies) : 0;
    }
    return missing;
  }

  /** What to look at. */
  String text() {
    int kind = 0;
    while (crowd(hand, kind) == 0) {
      kind++;
    }
    return String.format(
        Locale.ROOT,
        "needs %s in any case: %s has %d of %s, and there are only %d; is every letter and number"
            + " right?",
        jokers == 1 ? "a joker" : jokers + " jokers",
        hand,
        hand.total(kind),
        Tile.symbol(kind),
        TileSet.USUAL.copies(kind));
  }
}
