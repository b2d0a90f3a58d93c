package org.tallywall.strategies.habit;

import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.read.OpponentReader;

/**
 * The order in which a hand that was given up is thrown: what has just gone round unclaimed; the
 * last of its kind; what no live line of the exposed hands wants; what can give an exposure only; a
 * joker; one of her tiles, the one wanted by the fewest ways. Of equals the tile that the own hand
 * misses least.
 */
final class SafeOrder {
  private static final int JUST_PASSED_OVER = 0;
  private static final int LAST_OF_ITS_KIND = 1;
  private static final int NO_LIVE_LINE = 2;
  private static final int EXPOSURE_ONLY = 3;
  private static final int JOKER = 4;
  private static final int HERS = 5;

  /**
   * The safest tile.
   *
   * @param view what the seat knows, with 14 tiles
   * @param judge has judged the 14 tiles
   * @param reader has read the others
   * @param feared fewest exposures on one rack that make a player be feared
   * @return its kind
   */
  int next(SeatView view, RackJudge judge, OpponentReader reader, int feared) {
    int found = -1;
    int lowest = Integer.MAX_VALUE;
    double danger = 0;
    double most = 0;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      if (view.held(kind) > 0) {
        int rank = rank(view, reader, kind, feared);
        double risk = rank == HERS || rank == EXPOSURE_ONLY ? reader.danger(kind, 0) : 0;
        double left = judge.worthWithout(kind);
        boolean safer = rank < lowest || (rank == lowest && risk < danger);
        if (safer || (rank == lowest && risk == danger && left > most)) {
          found = kind;
          lowest = rank;
          danger = risk;
          most = left;
        }
      }
    }
    return found;
  }

  private static int rank(SeatView view, OpponentReader reader, int kind, int feared) {
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
    if (!reader.hers(kind, 1)) {
      return NO_LIVE_LINE;
    }
    return reader.exposureOnly(kind, feared) && !reader.hers(kind, 3) ? EXPOSURE_ONLY : HERS;
  }
}
