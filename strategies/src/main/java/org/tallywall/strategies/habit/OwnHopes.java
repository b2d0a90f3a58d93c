package org.tallywall.strategies.habit;

import org.tallywall.core.play.SeatView;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.hand.WinHope;
import org.tallywall.strategies.read.Stakes;

/** What rides on the own hand once a tile is thrown, in points by the payments of the table. */
final class OwnHopes {
  private static final double LEAST = 1e-12;

  /** Judges by what the rack is worth; null where the distance is judged by. */
  private final WinHope rack;

  private double between;
  private double whole;
  private double asItIs;

  OwnHopes(HopesBy by) {
    rack = by == HopesBy.RACK ? new WinHope() : null;
  }

  /**
   * Before tiles are weighed.
   *
   * @param view what the seat knows, with 14 tiles
   * @param judge has judged them
   * @param stakes what rides on the game
   */
  void begin(SeatView view, RackJudge judge, Stakes stakes) {
    if (rack != null) {
      between = stakes.between(view.wallLeft());
      rack.look(view);
    } else {
      whole = Math.max(LEAST, judge.worth());
      asItIs = Hopes.points(judge.least(), view.wallLeft(), stakes);
    }
  }

  /**
   * What rides on the hand without a tile.
   *
   * @param worth what the judge says that the rack is worth without it
   * @return points
   */
  double without(double worth) {
    return rack != null ? between * rack.chance(worth) : worth / whole * asItIs;
  }

  /**
   * What is lost of it if somebody wins on the tile.
   *
   * @param worth what the judge says that the rack is worth without it
   * @return points
   */
  double lost(double worth) {
    return rack != null ? without(worth) : asItIs;
  }
}
