package org.tallywall.strategies.habit;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;

/** When to claim a discard for an exposure, and with how many jokers. */
public final class ClaimHabit {
  private static final String JOKERS = "claims.jokers-shown-at-most";
  private static final String JOKERS_AWAY = "claims.jokers-when-away-at-most";
  private static final String NATURALS = "claims.naturals-kept";
  private static final String GAIN = "claims.gain-at-least";
  private static final String NEARER = "claims.nearer-at-least";
  private static final int SLACK = 2;

  private final RackJudge judge;
  private final RackJudge after;
  private final ClaimTiming timing;
  private final ClaimTelling telling;
  private final ClaimLeaving leaving;
  private final Rack rack = new Rack();
  private final int jokersShown;
  private final int jokersAway;
  private final int naturalsKept;
  private final double gain;
  private final int nearer;

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
    timing = new ClaimTiming(values);
    telling = new ClaimTelling(values);
    leaving = new ClaimLeaving(values);
    jokersShown = values.whole(JOKERS);
    jokersAway = values.whole(JOKERS_AWAY);
    naturalsKept = values.whole(NATURALS);
    gain = values.number(GAIN);
    nearer = values.whole(NEARER);
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting> settings() {
    List<Setting> all = new ArrayList<>(ClaimTiming.settings());
    all.addAll(ClaimTelling.settings());
    all.addAll(ClaimLeaving.settings());
    all.addAll(own());
    return List.copyOf(all);
  }

  private static List<Setting> own() {
    return List.of(
        Setting.number(
            JOKERS,
            "5",
            "0",
            "5",
            "lay at most so many jokers in one exposure (\"do not show two in one\")"),
        Setting.number(
            JOKERS_AWAY,
            "4",
            "0",
            "14",
            "lay a joker only from so many tiles away: further off the exposure settles the line"
                + " and leaves the joker to be redeemed (\"claim early only without jokers\")"),
        Setting.number(
            NATURALS,
            "0",
            "0",
            "2",
            "keep so many naturals of the kind back behind jokers, to redeem one's own later"),
        Setting.number(
            GAIN,
            "1.2",
            "0.5",
            "3.0",
            "claim when the rack is worth so many times as much as before"),
        Setting.number(
            NEARER,
            "0",
            "-14",
            "1",
            "claim only what brings the nearest hand so many tiles nearer; 0 allows what leaves it"
                + " as far, below 0 what throws it back (\"no claim that does not help\")"));
  }

  /**
   * Whether and how to claim the tile on offer for an exposure.
   *
   * @param view what the seat knows; the hand is not complete with the tile
   * @return a legal choice
   */
  public ClaimChoice claim(SeatView view) {
    ClaimChoice best = ClaimChoice.nothing();
    if (view.offered() == Tile.JOKER || timing.tooEarly(view)) {
      return best;
    }
    judge.look(view, SLACK, 0);
    if (timing.tooFar(judge.least()) || !judge.wantsNow(view.offered())) {
      return best;
    }
    double worth = judge.worth() * gain;
    int mostJokers = judge.least() > jokersAway ? 0 : jokersShown;
    for (int size = 3; size <= 6; size++) {
      int naturals = Math.max(0, Math.min(view.held(view.offered()), size - 1) - naturalsKept);
      int jokers = size - 1 - naturals;
      if (jokers <= mostJokers && LegalMoves.mayExpose(view, view.offered(), size, jokers)) {
        Laying laying = lay(view, size, naturals, jokers);
        double then = worthAfter(laying);
        if (then > worth && judge.least() - after.least() >= nearer && !refused(laying)) {
          worth = then;
          best = ClaimChoice.expose(size, jokers);
        }
      }
    }
    return best;
  }

  private Laying lay(SeatView view, int size, int naturals, int jokers) {
    view.copyRack(rack);
    rack.remove(view.offered(), naturals);
    rack.remove(Tile.JOKER, jokers);
    Exposure exposure = Exposure.of(view.offered(), size, jokers);
    return new Laying(view, exposure, rack, view.reachWith(exposure));
  }

  private double worthAfter(Laying laying) {
    after.look(laying.view(), rack, laying.left(), SLACK, 0);
    return after.worthWithout(after.leastMissed());
  }

  private boolean refused(Laying laying) {
    return timing.tooFewGroups(laying)
        || telling.tellsTooMuch(laying)
        || leaving.leavesBadly(laying);
  }
}
