package org.tallywall.strategies.habit;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.read.CardUse;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * Which tile to give away next: the least missed, as far as what one keeps leaves a choice. What
 * one player should not get together she does not get while another stranger can go; no tile that
 * the hand needs is given in its place.
 */
final class Giving {
  static final Setting<Boolean> FLOWERS =
      Setting.onOff("passes.keep-flowers")
          .usual(false)
          .says("passes no flower while it has another tile to pass (\"do not pass flowers\")");
  private static final Setting<Boolean> PAIRS =
      Setting.onOff("passes.keep-pairs")
          .usual(false)
          .says(
              "breaks up no pair in the passes while it has another tile to pass (\"do not pass "
                  + "pairs\")");
  static final Setting<Double> POLITE =
      Setting.decimal("passes.polite-within")
          .from(0.0)
          .to(1.0)
          .usual(0.0)
          .says(
              "gives up this much of the rack's worth at most, as a share, to hand no player what "
                  + "she should not get together; 0 gives only strangers instead");
  private static final Setting<KeptDuring> DURING =
      Setting.choice("passes.keep-during", KeptDuring.class)
          .usual(KeptDuring.ALL)
          .says(
              "minds what it keeps and what it gives to one player: in all passes (all), in the "
                  + "first pass alone (first-pass), in the first round alone (first-round), from "
                  + "the second round on (second-round)");
  private static final int HAND = 14;
  private static final int SLACK = 2;

  /** A tile is a stranger if the rack without it keeps this share of its worth. */
  private static final double STRANGER = 0.98;

  private final RackJudge judge;
  private final HandedOver over;
  private final boolean keepFlowers;
  private final boolean keepPairs;
  private final KeptDuring during;
  private final double polite;
  private boolean minds;
  private SeatView view;
  private double whole;

  Giving(RackJudge judge, SettingValues values) {
    this.judge = judge;
    over = new HandedOver(values);
    keepFlowers = values.get(FLOWERS);
    keepPairs = values.get(PAIRS);
    during = values.get(DURING);
    polite = values.get(POLITE);
  }

  static List<Setting<?>> settings() {
    List<Setting<?>> all = new ArrayList<>();
    all.add(FLOWERS);
    all.add(PAIRS);
    all.addAll(HandedOver.settings());
    all.add(POLITE);
    all.add(DURING);
    return all;
  }

  /**
   * Judges the rack for somebody who gives nothing yet, after the first round.
   *
   * @param seat what the seat knows
   */
  void begin(SeatView seat) {
    begin(seat, seat.seat(), null, 0);
  }

  /**
   * Judges the rack for the courtesy pass.
   *
   * @param seat what the seat knows
   */
  void beginCourtesy(SeatView seat) {
    begin(seat, PassStep.ACROSS_1.to(seat.seat()), null, 0);
  }

  /**
   * Judges the rack for a pass.
   *
   * @param seat what the seat knows
   * @param step the pass
   * @param passesLeft passes still to come
   */
  void begin(SeatView seat, PassStep step, int passesLeft) {
    begin(seat, step.to(seat.seat()), step, passesLeft);
  }

  private void begin(SeatView seat, int to, PassStep step, int passesLeft) {
    view = seat;
    judge.look(seat, SLACK, passesLeft);
    whole = judge.worth();
    minds = during.covers(step);
    if (over.minds()) {
      over.begin(seat, to);
    }
  }

  /**
   * The tile that can go most easily.
   *
   * @return its kind; a joker where nothing else is left, -1 on an empty rack
   */
  int next() {
    if (minds && over.minds()) {
      int kind = judge.leastMissed(other -> mayGo(other) && over.mayGet(other));
      if (natural(kind) && (stranger(kind) || nearlyAsGood(kind))) {
        return kind;
      }
    }
    int kind = judge.leastMissed(this::mayGo);
    return natural(kind) ? kind : judge.leastMissed();
  }

  private boolean nearlyAsGood(int kind) {
    if (polite == 0) {
      return false;
    }
    double most = judge.worthWithout(judge.leastMissed(this::mayGo));
    return judge.worthWithout(kind) >= (1 - polite) * most;
  }

  /**
   * Of the strangers that may go, the one that is used most.
   *
   * @param use how much tiles are used
   * @return its kind, or -1 where no stranger may go
   */
  int mostUsedStranger(CardUse use) {
    int found = -1;
    double most = -1;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int one = kind;
      boolean there = judge.leastMissed(other -> other == one) == one;
      boolean goes = there && mayGo(kind) && (!minds || !over.minds() || over.mayGet(kind));
      if (goes && use.of(kind) > most && stranger(kind)) {
        found = kind;
        most = use.of(kind);
      }
    }
    return found;
  }

  /** Gives a tile, so that the next one can be found. */
  void give(int kind) {
    judge.take(kind);
    over.give(kind);
  }

  /** Which share of the rack's worth at the beginning is left without one more tile of a kind. */
  double kept(int kind) {
    return whole == 0 ? 1 : judge.worthWithout(kind) / whole;
  }

  /** Whether the rack as it was at the beginning hardly misses one more tile of a kind. */
  boolean stranger(int kind) {
    return kind != Tile.JOKER && judge.worthWithout(kind) >= STRANGER * whole;
  }

  /** The distance of the rack as it was at the beginning. */
  int away() {
    return judge.least();
  }

  /** Tiles that stand beside the nearest hand, however well they would do for another. */
  int beside() {
    return view.rackSize() - HAND + judge.least();
  }

  /** Tiles to spare, counted up to a number. */
  int strangers(int most) {
    int count = 0;
    while (count < most) {
      int kind = next();
      if (kind < 0 || !stranger(kind)) {
        break;
      }
      count++;
      give(kind);
    }
    return count;
  }

  private static boolean natural(int kind) {
    return kind >= 0 && kind != Tile.JOKER;
  }

  private boolean mayGo(int kind) {
    boolean kept = (keepFlowers && kind == Tile.FLOWER) || (keepPairs && view.held(kind) >= 2);
    return !(minds && kept);
  }
}
