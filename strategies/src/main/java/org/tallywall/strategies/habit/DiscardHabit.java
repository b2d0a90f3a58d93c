package org.tallywall.strategies.habit;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.read.OpponentReader;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * Which tile to throw: what the rack is worth without it, in points, less what throwing it risks.
 * The step of defense says how much the risk counts, and which tiles stay on the rack.
 */
public final class DiscardHabit {
  /** How much risk counts. */
  public static final Setting<Double> RISK_WEIGHT =
      Setting.decimal("discards.risk-weight")
          .from(0.0)
          .to(20.0)
          .usual(0.0)
          .says(
              "counts the points at risk this many times as much as the points hoped for; 0 throws "
                  + "by its own need alone");

  private static final Setting<Double> EXPOSURE_COSTS =
      Setting.decimal("discards.exposure-costs")
          .from(0.0)
          .to(20.0)
          .usual(0.0)
          .says(
              "counts giving somebody an exposure as this many points lost (\"do not feed them\")");

  /** By what the own chance to win is judged. */
  public static final Setting<HopesBy> HOPES_BY =
      Setting.choice("discards.hopes-by", HopesBy.class)
          .usual(HopesBy.DISTANCE)
          .says(
              "judges how likely it still wins beside what a tile risks: by how many tiles away it "
                  + "is (distance), by what the rest of its rack is worth and what all show (rack)");

  private static final Setting<Integer> FLOWERS =
      Setting.whole("discards.flowers-before-wall")
          .from(0)
          .to(99)
          .usual(0)
          .says(
              "with this many tiles left or fewer, throws no flower while it has another tile to "
                  + "throw (\"flowers get hotter as the game goes on\")");
  private static final Setting<Double> WEIGHT_BY_VALUE =
      Setting.decimal("defense.weight-by-value")
          .from(0.0)
          .to(1.0)
          .usual(0.5)
          .says("fears an expensive line more than a cheap one, with a weight of this much");

  /** Tiles whose loss leaves this share of the best discard's worth count as not needed. */
  private static final double NOT_NEEDED = 0.97;

  /** From further away a joker may still serve another line. */
  private static final int NEAR = 2;

  private final DefenseHabit defense;
  private final SpareOrder spare;
  private final SafeOrder safe;
  private final double riskWeight;
  private final double valueWeight;
  private final double exposureCosts;
  private final int flowersBefore;
  private final OwnHopes hopes;

  /**
   * The habit.
   *
   * @param defense the steps of defense
   * @param values the settings named {@code discards.…}
   */
  public DiscardHabit(DefenseHabit defense, SettingValues values) {
    this.defense = defense;
    riskWeight = Math.max(values.get(RISK_WEIGHT), KnowsHabit.riskWeight(values));
    exposureCosts = values.get(EXPOSURE_COSTS);
    flowersBefore = values.get(FLOWERS);
    hopes = new OwnHopes(values.get(HOPES_BY));
    valueWeight = values.get(WEIGHT_BY_VALUE);
    spare = new SpareOrder(values);
    safe = new SafeOrder(valueWeight, defense.hersFrom());
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> settings() {
    List<Setting<?>> all = new ArrayList<>(List.of(RISK_WEIGHT, EXPOSURE_COSTS, HOPES_BY, FLOWERS));
    all.addAll(SpareOrder.settings());
    all.add(WEIGHT_BY_VALUE);
    return List.copyOf(all);
  }

  /**
   * Whether the own need alone decides, so that the others need not be read.
   *
   * @return true if neither defense nor risk counts
   */
  public boolean byNeedAlone() {
    return !defense.isOn() && riskWeight == 0 && exposureCosts == 0;
  }

  /**
   * The tile to throw.
   *
   * @param view what the seat knows, with 14 tiles
   * @param judge has judged the 14 tiles
   * @param reader has read the others
   * @param stance the step of defense
   * @return its kind
   */
  public int discard(SeatView view, RackJudge judge, OpponentReader reader, Stance stance) {
    return discard(view, judge, reader, stance, kind -> true);
  }

  /**
   * The tile to throw, where some are kept whatever it costs.
   *
   * @param view what the seat knows, with 14 tiles
   * @param judge has judged the 14 tiles
   * @param reader has read the others
   * @param stance the step of defense
   * @param thrown which kinds may be thrown; where it holds no such tile, any may
   * @return its kind
   */
  public int discard(
      SeatView view,
      RackJudge judge,
      OpponentReader reader,
      Stance stance,
      RackJudge.KindTest thrown) {
    RackJudge.KindTest left = holdsAny(view, thrown) ? thrown : kind -> true;
    return new Choosing(view, judge, reader, left).discard(stance);
  }

  private static boolean holdsAny(SeatView view, RackJudge.KindTest of) {
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      if (view.held(kind) > 0 && of.test(kind)) {
        return true;
      }
    }
    return false;
  }

  /**
   * All tiles in the order in which they would go, each chosen as if those before it were not held.
   *
   * @param view what the seat knows, with 14 tiles
   * @param judge has judged the 14 tiles
   * @param reader has read the others
   * @param stance the step of defense
   * @param thrown which kinds may be thrown; the others come last
   * @return every kind on the rack once
   */
  public List<Integer> order(
      SeatView view,
      RackJudge judge,
      OpponentReader reader,
      Stance stance,
      RackJudge.KindTest thrown) {
    List<Integer> order = new ArrayList<>();
    RackJudge.KindTest left = kind -> !order.contains(kind);
    RackJudge.KindTest first = kind -> left.test(kind) && thrown.test(kind);
    int kinds = 0;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      kinds += view.held(kind) > 0 ? 1 : 0;
    }
    while (order.size() < kinds) {
      RackJudge.KindTest now = holdsAny(view, first) ? first : left;
      int next = new Choosing(view, judge, reader, now).discard(stance);
      if (next < 0 || order.contains(next)) {
        break;
      }
      order.add(next);
    }
    return order;
  }

  /** The worth that a tile which is not needed leaves at least. */
  static double enough(RackJudge judge) {
    return enough(judge, kind -> true);
  }

  /** The worth that one of some tiles which is not needed leaves at least. */
  private static double enough(RackJudge judge, RackJudge.KindTest of) {
    return NOT_NEEDED * judge.worthWithout(judge.leastMissed(of));
  }

  /**
   * A joker goes where a hand that is near has no use for it and needs everything else, and as the
   * very last discard, since nobody can take it.
   */
  private static boolean throwsJoker(SeatView view, RackJudge judge, Stance stance) {
    if (view.held(Tile.JOKER) == 0) {
      return false;
    }
    if (stance == Stance.LAST_WALL && view.wallLeft() == 0) {
      return true;
    }
    if (judge.least() > NEAR) {
      return false;
    }
    double enough = NOT_NEEDED * judge.worthWithout(Tile.JOKER);
    boolean useless = enough > 0 && enough >= NOT_NEEDED * NOT_NEEDED * judge.worth();
    return useless && judge.worthWithout(judge.leastMissed()) < enough;
  }

  /** One choice of a tile, among those that are still left to be named. */
  private final class Choosing {
    private final SeatView view;
    private final RackJudge judge;
    private final OpponentReader reader;
    private final RackJudge.KindTest left;

    Choosing(SeatView view, RackJudge judge, OpponentReader reader, RackJudge.KindTest left) {
      this.view = view;
      this.judge = judge;
      this.reader = reader;
      this.left = left;
    }

    int discard(Stance stance) {
      if (left.test(Tile.JOKER) && throwsJoker(view, judge, stance)) {
        return Tile.JOKER;
      }
      boolean oneAway = judge.least() <= 1;
      return switch (stance) {
        case OWN_HAND -> ownHand();
        case CAREFUL -> careful();
        case HOLD_BACK, COMING_BACK -> holdBack();
        case TO_THE_WALL -> safe.next(view, judge, reader, defense.fearedExposures(), left);
        case LAST_WALL ->
            oneAway ? byNeed(0, this::goesInTheLastWall) : safe.next(view, judge, reader, 1, left);
      };
    }

    private boolean goesInTheLastWall(int kind) {
      return !defense.keepsHersToTheLast() || !reader.hers(kind, 1, defense.hersFrom());
    }

    private int ownHand() {
      if (spare.isOn()) {
        double enough = enough(judge, left);
        int found = spare.next(view, kind -> left.test(kind) && judge.worthWithout(kind) >= enough);
        if (found >= 0) {
          return found;
        }
      }
      return byNeed(0, kind -> true);
    }

    /** Between tiles that are not needed the one that risks least, else by need. */
    private int careful() {
      double enough = enough(judge, left);
      return byNeed(defense.carefulRisk(), kind -> judge.worthWithout(kind) >= enough);
    }

    /** One away only a tile is kept that ends the game on every hand of hers. */
    private int holdBack() {
      int away = judge.least();
      if (away <= 1) {
        return byNeed(0, kind -> !reader.surelyWanted(kind));
      }
      int feared = defense.fearedExposures();
      double hersFrom = defense.hersFrom();
      double weight = away >= defense.holdBackAway() - 1 ? defense.holdBackRisk() : 0;
      if (!defense.keepsHers()) {
        return byNeed(weight, kind -> true);
      }
      if (away >= defense.holdBackAway()) {
        return byNeed(weight, kind -> !reader.hers(kind, feared, hersFrom));
      }
      return byNeed(weight, kind -> reader.exposureOnly(kind, feared));
    }

    /** The best of the allowed tiles; where none is allowed, the safest. */
    private int byNeed(double step, RackJudge.KindTest allowed) {
      int found = -1;
      if (view.wallLeft() <= flowersBefore) {
        found = best(step, kind -> kind != Tile.FLOWER && allowed.test(kind));
      }
      if (found < 0) {
        found = best(step, allowed);
      }
      return found >= 0 ? found : safe.next(view, judge, reader, 1, left);
    }

    private int best(double step, RackJudge.KindTest allowed) {
      int found = -1;
      double most = Double.NEGATIVE_INFINITY;
      double weight = Math.max(riskWeight, step);
      boolean weighs = weight > 0 || exposureCosts > 0;
      if (weighs) {
        hopes.begin(view, judge, reader.stakes());
      }
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        if (view.held(kind) > 0 && left.test(kind) && allowed.test(kind)) {
          double worth = judge.worthWithout(kind);
          if (weighs) {
            double given = exposureCosts == 0 ? 0 : reader.given(kind) * exposureCosts;
            double risk = reader.cost(kind, valueWeight, hopes.lost(worth), 0);
            worth = hopes.without(worth) - weight * risk - given;
          }
          boolean tied = worth == most && view.faceUp(kind) > view.faceUp(found);
          if (worth > most || tied) {
            most = worth;
            found = kind;
          }
        }
      }
      return found;
    }
  }
}
