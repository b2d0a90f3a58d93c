package org.tallywall.core.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/** What exposures leave possible, against trying every way to lay each on a group of each hand. */
@Tag("one-jdk")
class ReachAgainstPlainTest {
  private static final int CARDS = 250;
  private static final int POSITIONS = 12;

  @Test
  void reach_ofManyExposures_holdsTheHandsThatTakeThem() {
    int none = 0;
    int several = 0;
    for (int number = 0; number < CARDS; number++) {
      RandomPositions positions = new RandomPositions(11, number);
      ConcreteHands hands = positions.card();
      for (int at = 0; at < POSITIONS; at++) {
        List<Exposure> exposures = exposures(positions, hands);
        Reach reach = hands.reach(exposures);
        int[] plain =
            IntStream.range(0, hands.size()).filter(i -> takes(hands, i, exposures)).toArray();
        int[] found = IntStream.range(0, reach.size()).map(reach::index).toArray();
        assertThat(found).as("%s", exposures).isEqualTo(plain);
        checkRows(hands, reach, exposures);
        none += plain.length == 0 ? 1 : 0;
        several += plain.length > 0 && exposures.size() > 1 ? 1 : 0;
      }
    }
    assertThat(none).isGreaterThan(CARDS);
    assertThat(several).isGreaterThan(CARDS / 2);
  }

  /** Two thirds as a player of the card would lay them open, one third of any kind and size. */
  private static List<Exposure> exposures(RandomPositions positions, ConcreteHands hands) {
    List<Exposure> exposures = new ArrayList<>(positions.exposures(hands));
    if (positions.random().below(3) == 0) {
      int kind = positions.random().below(Tile.NATURALS);
      int size = 3 + positions.random().below(4);
      exposures.add(new Exposure(kind, size, positions.random().below(size)));
    } else if (!exposures.isEmpty() && positions.random().below(4) == 0) {
      exposures.add(exposures.get(0));
    }
    return exposures;
  }

  private static boolean takes(ConcreteHands hands, int index, List<Exposure> exposures) {
    Line line = hands.line(hands.lineOf(index));
    for (Exposure exposure : exposures) {
      if (line.concealed() || exposure.jokers() > 0 && !line.terms().jokers()) {
        return false;
      }
    }
    ConcreteHand hand = hands.hand(index);
    return lay(hand, exposures, 0, new boolean[hand.groups()]);
  }

  private static boolean lay(
      ConcreteHand hand, List<Exposure> exposures, int next, boolean[] laid) {
    if (next == exposures.size()) {
      return true;
    }
    Exposure exposure = exposures.get(next);
    for (int group = 0; group < hand.groups(); group++) {
      boolean fits =
          hand.groupKind(group) == exposure.kind() && hand.groupSize(group) == exposure.size();
      if (!laid[group] && fits) {
        laid[group] = true;
        if (lay(hand, exposures, next + 1, laid)) {
          return true;
        }
        laid[group] = false;
      }
    }
    return false;
  }

  /**
   * Each row tells its hand, its line, and which further tile of a kind it wants, natural or not.
   */
  private static void checkRows(ConcreteHands hands, Reach reach, List<Exposure> exposures) {
    int open = exposures.stream().mapToInt(Exposure::size).sum();
    assertThat(reach.wanted()).isEqualTo(14 - open);
    assertThat(reach.hands()).isSameAs(hands);
    long lines = IntStream.range(0, reach.size()).map(reach::line).distinct().count();
    assertThat(reach.lines()).isEqualTo((int) lines);
    for (int at = 0; at < reach.size(); at += 7) {
      int index = reach.index(at);
      assertThat(reach.hand(at)).isSameAs(hands.hand(index));
      assertThat(reach.line(at)).isEqualTo(hands.lineOf(index));
      boolean jokers = hands.line(reach.line(at)).terms().jokers();
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        int wanted = hands.hand(index).total(kind);
        for (Exposure exposure : exposures) {
          wanted -= exposure.kind() == kind ? exposure.size() : 0;
        }
        int natural = jokers ? hands.hand(index).loose(kind) : wanted;
        for (int held = 1; held <= 4; held++) {
          assertThat(reach.wants(at, kind, held)).isEqualTo(held <= wanted);
          assertThat(reach.wantsNatural(at, kind, held)).isEqualTo(held <= natural);
        }
        assertThat(reach.wants(at, kind, 17)).isFalse();
      }
    }
  }
}
