package org.tallywall.strategies.habit;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/** When to claim a discard for an exposure, and with how many jokers. */
public final class ClaimHabit {
  private static final Setting<Integer> JOKERS =
      Setting.whole("claims.jokers-shown-at-most")
          .from(0)
          .to(5)
          .usual(5)
          .says("shows at most this many jokers in one exposure (\"do not show two in one\")");

  /** From how many tiles away on jokers are shown, 0 to 14. */
  public static final Setting<Integer> JOKERS_AWAY =
      Setting.whole("claims.jokers-when-away-at-most")
          .from(0)
          .to(14)
          .usual(4)
          .says(
              "shows a joker only when this many tiles away or nearer: before that, an exposure "
                  + "settles the line and leaves the joker to be redeemed (\"claim early only without "
                  + "jokers\")");

  private static final Setting<Integer> NATURALS =
      Setting.whole("claims.naturals-kept")
          .from(0)
          .to(2)
          .usual(0)
          .says("keeps this many naturals of the kind back behind jokers, to redeem its own later");

  /** How many times as much a claim must make the rack worth. */
  public static final Setting<Double> GAIN =
      Setting.decimal("claims.gain-at-least")
          .from(0.5)
          .to(3.0)
          .usual(1.2)
          .says("claims only if that makes the rack worth this many times as much");

  static final Setting<Integer> NEARER =
      Setting.whole("claims.nearer-at-least")
          .from(-14)
          .to(1)
          .usual(0)
          .says(
              "claims only what brings the nearest hand this many tiles nearer; 0 allows what "
                  + "leaves it as far away, below 0 what sets it back (\"no claim that does not help\")");
  static final Setting<Boolean> BESIDE_ONE =
      Setting.onOff("claims.no-second-joker-beside-one")
          .usual(false)
          .says(
              "lays no second joker beside a single tile of its own, unless that makes it one away "
                  + "(\"two jokers beside one tile are a present\")");
  private static final int SLACK = 2;

  /** The least that anything is compared with. */
  private static final double LEAST = 1e-12;

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
  private final boolean notBesideOne;

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
    jokersShown = values.get(JOKERS);
    jokersAway = values.get(JOKERS_AWAY);
    naturalsKept = values.get(NATURALS);
    gain = values.get(GAIN);
    nearer = values.get(NEARER);
    notBesideOne = values.get(BESIDE_ONE);
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> settings() {
    List<Setting<?>> all = new ArrayList<>(ClaimTiming.settings());
    all.addAll(ClaimTelling.settings());
    all.addAll(ClaimLeaving.settings());
    all.addAll(own());
    return List.copyOf(all);
  }

  private static List<Setting<?>> own() {
    return List.of(JOKERS, JOKERS_AWAY, NATURALS, GAIN, NEARER, BESIDE_ONE);
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
    if (beforehand(view) != Objection.NONE) {
      return best;
    }
    double worth = judge.worth() * gain;
    int mostJokers = mostJokers();
    for (int size = 3; size <= 6; size++) {
      int naturals = naturals(view, size);
      int jokers = size - 1 - naturals;
      if (jokers <= mostJokers && LegalMoves.mayExpose(view, view.offered(), size, jokers)) {
        Laying laying = lay(view, size, naturals, jokers);
        double then = worthAfter(laying);
        if (then > worth && objection(laying) == Objection.NONE) {
          worth = then;
          best = ClaimChoice.expose(size, jokers);
        }
      }
    }
    return best;
  }

  /**
   * All claims that the player may make, of each size the one that it would make, and what it
   * thinks of them.
   *
   * @param view what the seat knows; the hand is not complete with the tile
   * @return in the order of their sizes; what they are worth is compared with no claim
   */
  public List<Weighed> weigh(SeatView view) {
    List<Weighed> all = new ArrayList<>();
    boolean tooEarly = timing.tooEarly(view);
    judge.look(view, SLACK, 0);
    Objection before = tooEarly ? Objection.TOO_EARLY : beforehand(view);
    double worth = Math.max(LEAST, judge.worth());
    for (int size = 3; size <= 6; size++) {
      int naturals = naturals(view, size);
      int jokers = size - 1 - naturals;
      if (LegalMoves.mayExpose(view, view.offered(), size, jokers)) {
        Laying laying = lay(view, size, naturals, jokers);
        double then = worthAfter(laying);
        Objection objection = before;
        if (before == Objection.NONE) {
          objection =
              jokers > mostJokers()
                  ? Objection.JOKERS
                  : then <= judge.worth() * gain ? Objection.NOT_WORTH_IT : objection(laying);
        }
        all.add(new Weighed(new Move.Claim(size, jokers), then / worth, Weighed.UNREAD, objection));
      }
    }
    return all;
  }

  /** What speaks against any claim of the tile on offer. */
  private Objection beforehand(SeatView view) {
    if (timing.tooFar(view, judge.least())) {
      return Objection.TOO_FAR;
    }
    return judge.wantsNow(view.offered()) ? Objection.NONE : Objection.UNWANTED;
  }

  /** The most jokers shown in one exposure at this distance. */
  private int mostJokers() {
    return judge.least() > jokersAway ? 0 : jokersShown;
  }

  private int naturals(SeatView view, int size) {
    return Math.max(0, Math.min(view.held(view.offered()), size - 1) - naturalsKept);
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

  /** What speaks against a claim whatever it is worth; what is left by it has been judged. */
  private Objection objection(Laying laying) {
    if (judge.least() - after.least() < nearer) {
      return Objection.NOT_NEARER;
    } else if (notBesideOne && secondBesideOne(laying.exposure()) && after.least() > 1) {
      return Objection.JOKERS;
    } else if (timing.tooFewGroups(laying)) {
      return Objection.FEW_GROUPS;
    } else if (telling.tellsTooMuch(laying)) {
      return Objection.TELLS;
    }
    return leaving.leavesBadly(laying) ? Objection.LEAVES_BADLY : Objection.NONE;
  }

  private static boolean secondBesideOne(Exposure laid) {
    return laid.jokers() >= 2 && laid.naturals() <= 2;
  }

  /**
   * How many times as much a rack must be worth with a claim as without.
   *
   * @return 0.5 to 3
   */
  public double gain() {
    return gain;
  }
}
