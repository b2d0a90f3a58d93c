package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.read.OpponentReader;

/** Which tile to throw, by the own need and by the step of defence. */
public final class DiscardHabit {
  private static final String NAME = "discards.";

  /** Tiles whose loss leaves this share of the best discard's worth count as not needed. */
  private static final double NOT_NEEDED = 0.97;

  private final DefenceHabit defence;
  private final SafeOrder safe = new SafeOrder();
  private final double riskWeight;
  private final double valueWeight;

  /**
   * The habit.
   *
   * @param defence the steps of defence
   * @param values the settings named {@code discards.…}
   */
  public DiscardHabit(DefenceHabit defence, SettingValues values) {
    this.defence = defence;
    riskWeight = values.number(NAME + "risk-weight");
    valueWeight = values.number("defence.weight-by-value");
  }

  /**
   * The settings.
   *
   * @param risk default weight of risk
   * @return in the order listed
   */
  public static List<Setting> settings(String risk) {
    return List.of(
        Setting.number(
            NAME + "risk-weight",
            risk,
            "0.0",
            "1.0",
            "how much the points at risk count beside those hoped for; 0 throws by need alone"),
        Setting.number(
            "defence.weight-by-value",
            "0.5",
            "0.0",
            "1.0",
            "how much more a dear line is feared than a cheap one"));
  }

  /**
   * Whether the own need alone decides, so that the others need not be read.
   *
   * @return true if neither defence nor risk counts
   */
  public boolean byNeedAlone() {
    return !defence.isOn() && riskWeight == 0;
  }

  /**
   * The tile to throw.
   *
   * @param view what the seat knows, with 14 tiles
   * @param judge has judged the 14 tiles
   * @param reader has read the others
   * @param stance the step of defence
   * @return its kind
   */
  public int discard(SeatView view, RackJudge judge, OpponentReader reader, Stance stance) {
    if (throwsJoker(view, judge, stance)) {
      return Tile.JOKER;
    }
    boolean oneAway = judge.least() <= 1;
    return switch (stance) {
      case OWN_HAND -> byNeed(view, judge, reader, kind -> true);
      case CAREFUL -> careful(view, judge, reader);
      case HOLD_BACK, COMING_BACK -> holdBack(view, judge, reader);
      case TO_THE_WALL -> safe.next(view, judge, reader, defence.fearedExposures());
      case LAST_WALL ->
          oneAway
              ? byNeed(view, judge, reader, kind -> !reader.hers(kind, 1))
              : safe.next(view, judge, reader, 1);
    };
  }

  /**
   * A joker goes where the hand has no use for it and needs everything else, and as the very last
   * discard, since nobody can take it.
   */
  private static boolean throwsJoker(SeatView view, RackJudge judge, Stance stance) {
    if (view.held(Tile.JOKER) == 0) {
      return false;
    }
    if (stance == Stance.LAST_WALL && view.wallLeft() == 0) {
      return true;
    }
    double enough = NOT_NEEDED * judge.worthWithout(Tile.JOKER);
    boolean useless = enough > 0 && enough >= NOT_NEEDED * NOT_NEEDED * judge.worth();
    return useless && judge.worthWithout(judge.leastMissed()) < enough;
  }

  /** The least missed of the allowed tiles, danger weighed in; any tile where none is allowed. */
  private int byNeed(
      SeatView view, RackJudge judge, OpponentReader reader, RackJudge.KindTest allowed) {
    int found = -1;
    double most = Double.NEGATIVE_INFINITY;
    double whole = Math.max(1e-12, judge.worth());
    double hopes = Hopes.points(judge.least(), view.wallLeft());
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (view.held(kind) > 0 && allowed.test(kind)) {
        double left = judge.worthWithout(kind);
        if (riskWeight > 0) {
          left = left / whole * hopes - riskWeight * reader.cost(kind, valueWeight, hopes);
        }
        boolean tied = left == most && view.faceUp(kind) > view.faceUp(found);
        if (left > most || tied) {
          most = left;
          found = kind;
        }
      }
    }
    return found >= 0 ? found : safe.next(view, judge, reader, 1);
  }

  private int careful(SeatView view, RackJudge judge, OpponentReader reader) {
    double enough = judge.worthWithout(judge.leastMissed()) * NOT_NEEDED;
    int found = -1;
    double least = 0;
    double most = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (view.held(kind) > 0) {
        double left = judge.worthWithout(kind);
        double danger = reader.danger(kind, valueWeight);
        boolean better = found < 0 || danger < least || (danger == least && left > most);
        if (left >= enough && better) {
          found = kind;
          least = danger;
          most = left;
        }
      }
    }
    return found >= 0 ? found : judge.leastMissed();
  }

  private int holdBack(SeatView view, RackJudge judge, OpponentReader reader) {
    int feared = defence.fearedExposures();
    int away = judge.least();
    if (away >= defence.holdBackAway()) {
      return byNeed(view, judge, reader, kind -> !reader.hers(kind, feared));
    }
    if (away == defence.holdBackAway() - 1 && away > 1) {
      return byNeed(view, judge, reader, kind -> reader.exposureOnly(kind, feared));
    }
    return byNeed(view, judge, reader, kind -> !reader.surelyWanted(kind, feared));
  }
}
