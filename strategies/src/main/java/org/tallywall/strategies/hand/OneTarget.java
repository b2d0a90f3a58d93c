package org.tallywall.strategies.hand;

import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;

/**
 * Looks at a rack as somebody does who sees one way only: the nearest hand, the first on the card
 * of equals. Hands that are dead are left out as far as face-up tiles tell.
 */
public final class OneTarget {
  private final HandMeter meter = new HandMeter();
  private final TargetTiles target = new TargetTiles();
  private final Rack own = new Rack();
  private final Obtainable obtainable = new Obtainable();
  private Reach reach;
  private int hand;
  private int least;

  /** Nothing looked at yet. */
  public OneTarget() {}

  /**
   * Looks at the own rack as it is.
   *
   * @param view what the seat knows
   */
  public void look(SeatView view) {
    view.copyRack(own);
    look(view, own, view.reach(view.seat()));
  }

  /**
   * Looks at a rack that the seat might have.
   *
   * @param view what the seat knows
   * @param rack the concealed tiles
   * @param possible the hands that its exposures would leave
   */
  public void look(SeatView view, Rack rack, Reach possible) {
    reach = possible;
    obtainable.count(view);
    meter.obtainable(obtainable.counts());
    meter.hold(rack);
    hand = -1;
    least = HandMeter.NONE;
    for (int at = 0; at < reach.size(); at++) {
      int away = meter.away(reach, at);
      if (away < least && !meter.dead(reach, at)) {
        least = away;
        hand = at;
      }
    }
    target.set(rack, reach, hand);
  }

  /**
   * The distance of the hand looked at.
   *
   * @return 0 to 14, or {@link HandMeter#NONE} where all are dead
   */
  public int least() {
    return least;
  }

  /**
   * The line of the hand looked at.
   *
   * @return its place on the card, or {@link Player#NO_AIM}
   */
  public int line() {
    return hand < 0 ? Player.NO_AIM : reach.line(hand);
  }

  /**
   * How many tiles of a kind the hand does not want.
   *
   * @param kind a natural kind
   * @return 0 or more
   */
  public int spare(int kind) {
    return target.spare(kind);
  }

  /**
   * Whether the hand still lacks tiles of a kind.
   *
   * @param kind a natural kind
   * @return true if so
   */
  public boolean wants(int kind) {
    return target.wants(kind);
  }
}
