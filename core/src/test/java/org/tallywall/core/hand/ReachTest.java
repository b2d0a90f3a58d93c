package org.tallywall.core.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.TestCards;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;

/** What exposures leave possible. */
@Tag("one-jdk")
class ReachTest {
  private static final ConcreteHands CARD = new ConcreteHands(TestCards.testCard());

  private static List<String> lines(String exposures) {
    Reach reach = CARD.reach(TileText.exposures(exposures));
    return IntStream.range(0, reach.size())
        .mapToObj(at -> CARD.line(reach.line(at)).id())
        .distinct()
        .toList();
  }

  @Test
  void reach_withoutExposures_holdsEveryLine() {
    assertThat(lines("")).hasSize(8);
  }

  @Test
  void reach_ofAKongOfNorth_leavesTheTwoLinesThatHaveIt() {
    assertThat(lines("NNNN")).containsExactly("T1", "T8");
  }

  @Test
  void reach_ofAGroupOfAConcealedLine_leavesNothing() {
    assertThat(lines("222b")).isEmpty();
  }

  @Test
  void reach_ofAWrongSize_leavesNothing() {
    assertThat(lines("444c")).isEmpty();
  }

  @Test
  void openSizes_areWhatTryingEachGroupGives() {
    for (int number = 0; number < 150; number++) {
      RandomPositions positions = new RandomPositions(7, number);
      ConcreteHands hands = positions.card();
      List<Exposure> exposures = positions.exposures(hands);
      Reach reach = hands.reach(exposures);
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        for (int size = 3; size <= 6; size++) {
          for (int jokers = 0; jokers < 2; jokers++) {
            List<Exposure> more = new ArrayList<>(exposures);
            more.add(new Exposure(kind, size, jokers));
            assertThat(reach.openSizes(kind, jokers > 0) >> size & 1)
                .isEqualTo(hands.reach(more).size() > 0 ? 1 : 0);
          }
        }
      }
    }
  }

  @Test
  void cache_givesTheSameHandsInAnyOrder() {
    for (int number = 0; number < 100; number++) {
      RandomPositions positions = new RandomPositions(8, number);
      ConcreteHands hands = positions.card();
      ReachCache cache = new ReachCache(hands);
      for (int at = 0; at < 20; at++) {
        List<Exposure> exposures = new ArrayList<>(positions.exposures(hands));
        Reach plain = hands.reach(exposures);
        Collections.reverse(exposures);
        Reach cached = cache.reach(exposures);
        assertThat(cached.size()).isEqualTo(plain.size());
        assertThat(IntStream.range(0, plain.size()).map(plain::index).toArray())
            .isEqualTo(IntStream.range(0, cached.size()).map(cached::index).toArray());
        assertThat(cache.reach(exposures)).isSameAs(cached);
      }
    }
  }
}
