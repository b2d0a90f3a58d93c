package org.tallywall.strategies.habit;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/** When to redeem jokers, when to throw one, and what is thrown to get one. */
public final class JokerHabit {
  private static final Setting<Redeeming> EXCHANGE =
      Setting.choice("jokers.exchange", Redeeming.class)
          .usual(Redeeming.WHEN_USEFUL)
          .says(
              "redeems a joker: if that makes the rack worth no less (when-useful), as soon as it "
                  + "can (at-once), only if that completes the hand (hold-back), not at all (never) "
                  + "(\"redeem at once when you can\")");
  private static final Setting<Integer> NOT_THROWN =
      Setting.whole("jokers.not-thrown-before-wall")
          .from(0)
          .to(99)
          .usual(99)
          .says(
              "throws a joker only with this many tiles left in the wall or fewer (\"never throw a "
                  + "joker before the end game\")");
  private static final int SLACK = 2;

  private final RackJudge after;
  private final Jokerless jokerless;
  private final Bait bait;
  private final Rack rack = new Rack();
  private final Redeeming exchange;
  private final int notThrownWall;

  /**
   * The habit.
   *
   * @param after judges the rack after an exchange
   * @param values the settings named {@code jokers.…}
   */
  public JokerHabit(RackJudge after, SettingValues values) {
    this.after = after;
    jokerless = new Jokerless(after, values);
    bait = new Bait(values);
    exchange = values.get(EXCHANGE);
    notThrownWall = values.get(NOT_THROWN);
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> settings() {
    List<Setting<?>> all = new ArrayList<>();
    all.add(EXCHANGE);
    all.add(NOT_THROWN);
    all.addAll(Jokerless.settings());
    all.addAll(Bait.settings());
    return List.copyOf(all);
  }

  /**
   * An exchange to make now.
   *
   * @param view what the seat knows, in its turn
   * @param worth what the rack is worth as it is
   * @return the exchange, or null for none
   */
  public TurnChoice exchange(SeatView view, double worth) {
    TurnChoice best = null;
    double most = worth;
    for (int owner = 0; owner < Seats.COUNT && exchange != Redeeming.NEVER; owner++) {
      for (int index = 0; index < view.exposures(owner).size(); index++) {
        if (LegalMoves.mayExchange(view, owner, index)) {
          double then = worthAfter(view, view.exposures(owner).get(index).kind());
          if (then >= most || (exchange == Redeeming.AT_ONCE && best == null)) {
            most = Math.max(most, then);
            best = TurnChoice.exchange(owner, index);
          }
        }
      }
    }
    return best == null || jokerless.leaves(view) ? null : best;
  }

  private double worthAfter(SeatView view, int given) {
    view.copyRack(rack);
    rack.remove(given);
    rack.add(Tile.JOKER);
    after.look(view, rack, view.reach(view.seat()), SLACK, 0);
    boolean waits = exchange == Redeeming.HOLD_BACK && after.least() > 0;
    return waits ? Double.NEGATIVE_INFINITY : after.worth();
  }

  /**
   * The tile to throw, jokers considered.
   *
   * @param view what the seat knows, with 14 tiles
   * @param judge has judged them
   * @param chosen the tile that would be thrown otherwise
   * @param defends whether safety decides what is thrown, so that no bait is laid
   * @return its kind
   */
  public int discard(SeatView view, RackJudge judge, int chosen, boolean defends) {
    if (jokerless.throwsDrawn(view)) {
      return Tile.JOKER;
    }
    if (chosen == Tile.JOKER && view.wallLeft() > notThrownWall) {
      return judge.leastMissed();
    }
    return defends ? chosen : bait.discard(view, judge, chosen);
  }
}
