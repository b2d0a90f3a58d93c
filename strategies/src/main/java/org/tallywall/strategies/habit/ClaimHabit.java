package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;

/** When to claim a discard for an exposure, and with how many jokers. */
public final class ClaimHabit {
  private static final String NAME = "claims.";
  private static final int SLACK = 2;

  private final RackJudge judge;
  private final RackJudge after;
  private final Rack rack = new Rack();
  private final int awayMost;
  private final int wallMost;
  private final int jokersShown;
  private final int naturalsKept;
  private final double gain;

  /**
   * The habit.
   *
   * @param judge judges the rack as it is
   * @param after judges the rack after a claim
   * @param values the settings named {@code claims.…}
   */
  public ClaimHabit(RackJudge judge, RackJudge after, SettingValues values) {
    this.judge = judge;
    this.after = after;
    awayMost = values.whole(NAME + "when-away-at-most");
    wallMost = values.whole(NAME + "not-before-wall");
    jokersShown = values.whole(NAME + "jokers-shown-at-most");
    naturalsKept = values.whole(NAME + "naturals-kept");
    gain = values.number(NAME + "gain-at-least");
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting> settings() {
    return List.of(
        Setting.number(
            NAME + "when-away-at-most",
            "14",
            "0",
            "14",
            "claim only from so many tiles away (\"do not claim early\")"),
        Setting.number(
            NAME + "not-before-wall",
            "99",
            "0",
            "99",
            "claim only with so many tiles left in the wall, or fewer"),
        Setting.number(
            NAME + "jokers-shown-at-most",
            "5",
            "0",
            "5",
            "lay at most so many jokers in one exposure (\"do not show two in one\")"),
        Setting.number(
            NAME + "naturals-kept",
            "0",
            "0",
            "2",
            "keep so many naturals of the kind back behind jokers, to redeem one's own later"),
        Setting.number(
            NAME + "gain-at-least",
            "1.0",
            "0.5",
            "3.0",
            "claim when the rack is worth so many times as much as before"));
  }

  /**
   * Whether and how to claim the tile on offer for an exposure.
   *
   * @param view what the seat knows; the hand is not complete with the tile
   * @return a legal choice
   */
  public ClaimChoice claim(SeatView view) {
    ClaimChoice best = ClaimChoice.nothing();
    if (view.offered() == Tile.JOKER || view.wallLeft() > wallMost) {
      return best;
    }
    judge.look(view, SLACK, 0);
    if (judge.least() > awayMost || !judge.wantsNow(view.offered())) {
      return best;
    }
    double worth = judge.worth() * gain;
    for (int size = 3; size <= 6; size++) {
      int naturals = Math.max(0, Math.min(view.held(view.offered()), size - 1) - naturalsKept);
      int jokers = size - 1 - naturals;
      if (jokers <= jokersShown && LegalMoves.mayExpose(view, view.offered(), size, jokers)) {
        double then = worthAfter(view, size, naturals, jokers);
        if (then > worth) {
          worth = then;
          best = ClaimChoice.expose(size, jokers);
        }
      }
    }
    return best;
  }

  private double worthAfter(SeatView view, int size, int naturals, int jokers) {
    int tile = view.offered();
    view.copyRack(rack);
    rack.remove(tile, naturals);
    rack.remove(Tile.JOKER, jokers);
    Reach left = view.reachWith(Exposure.of(tile, size, jokers));
    after.look(view, rack, left, SLACK, 0);
    return after.worthWithout(after.leastMissed());
  }
}
