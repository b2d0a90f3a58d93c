package org.tallywall.strategies.reason;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.sheet.Move;
import org.tallywall.strategies.habit.Judging;
import org.tallywall.strategies.habit.Weighed;

/** What decided between the tile thrown and the next that a player would throw. */
final class Deciding {
  /** Shares of worth that differ by less are the same for whoever hears of them. */
  private static final double SAME_WORTH = 0.0005;

  /** The same of chances. */
  private static final double SAME_RISK = 0.0005;

  private Deciding() {}

  /**
   * What decided.
   *
   * @param view what the player knew, with 14 tiles
   * @param tile what it threw
   * @param player who threw it
   * @return the reason, or null where the rack holds nothing else
   */
  static Reason.Rather between(SeatView view, int tile, Judging player) {
    List<Weighed> all = player.discards(view);
    Weighed gone = null;
    Weighed next = null;
    for (Weighed one : all) {
      boolean thrown = tile(one) == tile;
      gone = thrown ? one : gone;
      next = next == null && !thrown ? one : next;
    }
    if (gone == null || next == null) {
      return null;
    }
    boolean first = all.get(0) == gone;
    return new Reason.Rather(
        tile, tile(next), first ? cause(view, gone, next, player) : new Reason.Cause.Otherwise());
  }

  private static int tile(Weighed one) {
    return ((Move.Discard) one.move()).tile();
  }

  private static Reason.Cause cause(SeatView view, Weighed gone, Weighed next, Judging player) {
    boolean knows = gone.read() && next.read();
    boolean safer = knows && gone.risk() < next.risk() - SAME_RISK;
    if (gone.worth() > next.worth() + SAME_WORTH) {
      return player.lineThatNeeds(view, tile(gone)) == Judging.NO_LINE
          ? new Reason.Cause.Needed(player.lineThatNeeds(view, tile(next)))
          : new Reason.Cause.KeepsMore(gone.worth(), next.worth());
    } else if (safer) {
      return new Reason.Cause.Safer(gone.risk(), next.risk());
    } else if (gone.worth() < next.worth() - SAME_WORTH) {
      return new Reason.Cause.Otherwise();
    }
    int out = view.faceUp(tile(gone));
    int otherOut = view.faceUp(tile(next));
    return out > otherOut ? new Reason.Cause.MoreOut(out, otherOut) : new Reason.Cause.Either();
  }
}
