package org.tallywall.strategies.hand;

import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;

/**
 * What a seat may still hope to see: how many tiles are unseen, and how likely each of them turns
 * up for it.
 *
 * @param draw chance that a given unseen tile is drawn by the seat
 * @param claim chance that it is drawn, or thrown by another so that it could be claimed
 */
record Outlook(double draw, double claim) {
  /** Chance beyond which nothing is counted on. */
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
    double draws = view.wallLeft() / 4.0 * horizon;
    double looks = draws + PASSED * passesLeft;
    double all = Math.max(1, unseen);
    return new Outlook(Math.min(MOST, looks / all), Math.min(MOST, (looks + thrown * draws) / all));
  }
}
