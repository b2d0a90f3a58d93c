package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.hand.LineWeights;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/** For or against concealed lines, pairs before groups, and pairs of which copies are out. */
final class LineTaste implements LineWeights {
  private static final Setting<Double> CONCEALED =
      Setting.decimal("aim.concealed-weight")
          .from(0.0)
          .to(4.0)
          .usual(1.0)
          .says(
              "counts a concealed line this many times as much (\"a concealed line is worth it "
                  + "only when dealt well\")");
  private static final Setting<Double> PAIRS_FIRST =
      Setting.decimal("aim.pairs-first")
          .from(0.0)
          .to(0.9)
          .usual(0.0)
          .says(
              "takes a share of this much off a line for each missing tile of its singles and "
                  + "pairs (\"look for pairs first\")");
  private static final Setting<Integer> LEAVE_PAIR =
      Setting.whole("aim.leave-pair-when-out")
          .from(1)
          .to(9)
          .usual(9)
          .says(
              "gives up on a pair with this many copies of its tile face up; 9 never does (\"two "
                  + "of four out: leave the pair\")");
  private static final int NEVER = 9;

  private final double concealed;
  private final double keptForPair;
  private final int leavePair;
  private SeatView view;
  private Reach reach;

  LineTaste(SettingValues values) {
    concealed = values.get(CONCEALED);
    keptForPair = 1 - values.get(PAIRS_FIRST);
    leavePair = values.get(LEAVE_PAIR);
  }

  static List<Setting<?>> settings() {
    return List.of(CONCEALED, PAIRS_FIRST, LEAVE_PAIR);
  }

  boolean neutral() {
    return concealed == 1 && keptForPair == 1 && leavePair >= NEVER;
  }

  @Override
  public void begin(SeatView seat, Rack rack, Reach possible) {
    view = seat;
    reach = possible;
  }

  @Override
  public double of(int hand, Lack lack, int naturals) {
    boolean closed = reach.hands().line(reach.line(hand)).concealed();
    double weight = closed ? concealed : 1;
    for (int missing = 0; missing < naturals; missing++) {
      weight *= keptForPair;
    }
    return leavePair < NEVER && waitsForLeftPair(hand, lack)
        ? weight * AllWeights.LEFT_ASIDE
        : weight;
  }

  private boolean waitsForLeftPair(int hand, Lack lack) {
    ConcreteHand made = reach.hand(hand);
    for (int at = 0; at < lack.kinds(); at++) {
      int kind = lack.kind(at);
      if (lack.natural(at) > 0 && made.loose(kind) >= 2 && view.faceUp(kind) >= leavePair) {
        return true;
      }
    }
    return false;
  }
}
