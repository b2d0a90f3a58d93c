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

/**
 * What jokers have to say in the choice of a line. Jokers that the seat has laid open itself are
 * counted as held, so that a quint laid with two is still one made from two.
 */
final class JokerAim implements LineWeights {
  private static final String WEIGHT = "aim.joker-weight";
  private static final String QUINTS = "aim.quints-from-jokers";
  private static final String PAIRS = "aim.pairs-lines-at-most-jokers";
  private static final int QUINT = 5;
  private static final int MOST_JOKERS = 12;

  private final double weight;
  private final int quintsFrom;
  private final int pairsAtMost;
  private Reach reach;
  private int jokers;

  JokerAim(SettingValues values) {
    weight = values.number(WEIGHT);
    quintsFrom = values.whole(QUINTS);
    pairsAtMost = values.whole(PAIRS);
  }

  static List<Setting> settings() {
    return List.of(
        Setting.number(
            WEIGHT,
            "1",
            "0.0",
            "1.0",
            "how much jokers held count when lines are compared; 0 leaves them out (\"ignore jokers"
                + " when choosing a direction\")"),
        Setting.number(
            QUINTS,
            "0",
            "0",
            "12",
            "lines with a group of five or more only with so many jokers (\"two or more: think of"
                + " quints\")"),
        Setting.number(
            PAIRS,
            "12",
            "0",
            "12",
            "lines of singles and pairs alone only with at most so many jokers (\"no joker: think"
                + " of singles and pairs\")"));
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
