package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;

/** When to redeem jokers. */
public final class JokerHabit {
  private static final String NAME = "jokers.";
  private static final int SLACK = 2;

  private final RackJudge after;
  private final Rack rack = new Rack();
  private final boolean atOnce;
  private final boolean never;

  /**
   * The habit.
   *
   * @param after judges the rack after an exchange
   * @param values the settings named {@code jokers.…}
   */
  public JokerHabit(RackJudge after, SettingValues values) {
    this.after = after;
    atOnce = values.word(NAME + "exchange").equals("at-once");
    never = values.word(NAME + "exchange").equals("never");
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting> settings() {
    return List.of(
        Setting.word(
            NAME + "exchange",
            "redeem a joker when the rack is worth no less for it, always at once, or never"
                + " (\"redeem at once when you can\")",
            "when-useful",
            "at-once",
            "never"));
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
    for (int owner = 0; owner < Seats.COUNT && !never; owner++) {
      for (int index = 0; index < view.exposures(owner).size(); index++) {
        if (LegalMoves.mayExchange(view, owner, index)) {
          double then = worthAfter(view, view.exposures(owner).get(index).kind());
          if (then >= most || (atOnce && best == null)) {
            most = Math.max(most, then);
            best = TurnChoice.exchange(owner, index);
          }
        }
      }
    }
    return best;
  }

  private double worthAfter(SeatView view, int given) {
    view.copyRack(rack);
    rack.remove(given);
    rack.add(Tile.JOKER);
    after.look(view, rack, view.reach(view.seat()), SLACK, 0);
    return after.worth();
  }
}
