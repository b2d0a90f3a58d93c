package org.tallywall.strategies.habit;

import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.read.CardUse;
import org.tallywall.strategies.read.OpponentReader;

/**
 * The order in which a hand that was given up is thrown: what has just gone round unclaimed; the
 * last of its kind; what is none of her tiles; what can give an exposure only; a joker; one of her
 * tiles. Of equals the one that risks least, then the one that fewest lines of the card use, then
 * the one that the own hand misses least.
 */
final class SafeOrder {
  private static final int JUST_PASSED_OVER = 0;
  private static final int LAST_OF_ITS_KIND = 1;
  private static final int NOT_HERS = 2;
  private static final int EXPOSURE_ONLY = 3;
  private static final int JOKER = 4;
  private static final int HERS = 5;

  private final CardUse use = new CardUse();
  private final double valueWeight;
  private final double hersFrom;
  private int rank;
  private double risk;
  private double used;
  private double kept;

  /**
   * An order.
   *
   * @param valueWeight how much more a dear line is feared than a cheap one, 0 to 1
   * @param hersFrom share of her live hands from which a tile is hers, 0 to 1
   */
  SafeOrder(double valueWeight, double hersFrom) {
    this.valueWeight = valueWeight;
    this.hersFrom = hersFrom;
  }

  /**
   * The safest tile.
   *
   * @param view what the seat knows, with 14 tiles
   * @param judge has judged the 14 tiles
   * @param reader has read the others
   * @param feared fewest exposures on one rack that make a player be feared
   * @param left which kinds may be named
   * @return its kind, or -1 where none of those held may be named
   */
  int next(
      SeatView view, RackJudge judge, OpponentReader reader, int feared, RackJudge.KindTest left) {
    use.count(view.table().hands());
    int found = -1;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      if (view.held(kind) > 0 && left.test(kind)) {
        int rankOfIt = rank(view, reader, kind, feared);
        double riskOfIt = reader.cost(kind, valueWeight, 0, 1);
        double usedOfIt = kind == Tile.JOKER ? 0 : use.of(kind);
        double leftWithout = judge.worthWithout(kind);
        if (found < 0 || safer(rankOfIt, riskOfIt, usedOfIt, leftWithout)) {
          found = kind;
          rank = rankOfIt;
          risk = riskOfIt;
          used = usedOfIt;
          kept = leftWithout;
        }
      }
    }
    return found;
  }

  private boolean safer(int rankOfIt, double riskOfIt, double usedOfIt, double leftWithout) {
    if (rankOfIt != rank) {
      return rankOfIt < rank;
    }
    if (riskOfIt != risk) {
      return riskOfIt < risk;
    }
    return usedOfIt != used ? usedOfIt < used : leftWithout > kept;
  }

  private int rank(SeatView view, OpponentReader reader, int kind, int feared) {
    if (kind == Tile.JOKER) {
      return JOKER;
    }
    if (view.discards() > 0 && view.discardTile(view.discards() - 1) == kind) {
      return JUST_PASSED_OVER;
    }
    TileSet tiles = view.table().rules().tiles();
    if (view.faceUp(kind) + 1 >= tiles.copies(kind)) {
      return LAST_OF_ITS_KIND;
    }
    if (!reader.hers(kind, 1, hersFrom)) {
      return NOT_HERS;
    }
    return reader.exposureOnly(kind, feared) && !reader.hers(kind, 3, 0) ? EXPOSURE_ONLY : HERS;
  }
}
