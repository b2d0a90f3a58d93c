package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.LineWeights;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * What jokers have to say in the choice of a line. Jokers that the seat has laid open itself are
 * counted as held, so that a quint laid with two is still one made from two.
 */
final class JokerAim implements LineWeights {
  private static final Setting<Double> WEIGHT =
      Setting.decimal("aim.joker-weight")
          .from(0.0)
          .to(1.0)
          .usual(1.0)
          .says(
              "counts its jokers with a weight of this much when it compares lines; 0 leaves them "
                  + "out (\"ignore jokers when you choose a direction\")");
  private static final Setting<Integer> QUINTS =
      Setting.whole("aim.quints-from-jokers")
          .from(0)
          .to(12)
          .usual(0)
          .says(
              "goes for a line with a group of five or more only with this many jokers or more "
                  + "(\"two or more: think of quints\")");
  private static final Setting<Integer> PAIRS =
      Setting.whole("aim.pairs-lines-at-most-jokers")
          .from(0)
          .to(12)
          .usual(12)
          .says(
              "goes for a line of nothing but singles and pairs only with at most this many jokers "
                  + "(\"no joker: think of singles and pairs\")");
  private static final int QUINT = 5;
  private static final int MOST_JOKERS = 12;

  private final double weight;
  private final int quintsFrom;
  private final int pairsAtMost;
  private Reach reach;
  private int jokers;

  JokerAim(SettingValues values) {
    weight = values.get(WEIGHT);
    quintsFrom = values.get(QUINTS);
    pairsAtMost = values.get(PAIRS);
  }

  static List<Setting<?>> settings() {
    return List.of(WEIGHT, QUINTS, PAIRS);
  }

  boolean neutral() {
    return weight == 1 && quintsFrom == 0 && pairsAtMost >= MOST_JOKERS;
  }

  @Override
  public void begin(SeatView view, Rack rack, Reach possible) {
    reach = possible;
    jokers = view.held(Tile.JOKER);
    for (Exposure exposure : view.exposures(view.seat())) {
      jokers += exposure.jokers();
    }
  }

  @Override
  public double of(int hand, Lack lack, int naturals) {
    ConcreteHand made = reach.hand(hand);
    boolean pairsOnly = made.groups() == 0;
    boolean quint = !pairsOnly && made.groupSize(0) >= QUINT;
    boolean aside = (quint && jokers < quintsFrom) || (pairsOnly && jokers > pairsAtMost);
    return aside ? AllWeights.LEFT_ASIDE : 1;
  }

  @Override
  public double jokers() {
    return weight;
  }
}
