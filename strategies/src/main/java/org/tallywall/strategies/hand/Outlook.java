package org.tallywall.strategies.hand;

import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;

/**
 * What a seat may still hope to see.
 *
 * @param draws how many tiles it will draw, or get in passes
 * @param thrown how many tiles others will throw besides, that it could claim
 * @param unseen how many tiles it cannot see, 1 or more
 */
record Outlook(double draws, double thrown, double unseen) {
  /** Share of the unseen tiles beyond which nothing is counted on. */
  private static final double MOST = 0.95;

  private static final double PASSED = 3;

  /**
   * The outlook of a seat.
   *
   * @param view what the seat knows
   * @param horizon which share of the wall the game is expected to last, 0 to 1
   * @param thrown how many tiles of the others come to a draw of one's own and can be had
   * @param passesLeft how many passes are still to come
   * @return the outlook
   */
  static Outlook of(SeatView view, double horizon, double thrown, int passesLeft) {
    int unseen = 0;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      unseen += view.unseen(kind);
    }
    double all = Math.max(1, unseen);
    double draws = view.wallLeft() / 4.0 * horizon;
    double looks = Math.min(MOST * all, draws + PASSED * passesLeft);
    return new Outlook(looks, Math.min(MOST * all - looks, thrown * draws), all);
  }
}
