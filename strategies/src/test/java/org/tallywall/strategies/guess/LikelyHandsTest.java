package org.tallywall.strategies.guess;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;

/** East heads for what its exposures allow, what is left, and what it did not throw itself. */
class LikelyHandsTest {
  private static final int DRAWS = 10_000;
  private static final ConcreteHands TWO =
      TestTable.card(
          "{ \"tiles\": \"NNNN 111b 222c 3333d\", \"value\": 25 }",
          "{ \"tiles\": \"NNNN 666b 777c 8888d\", \"value\": 25 }");

  /** How often of {@value #DRAWS} draws East heads for the hand with 666b 777c 8888d. */
  private static int sixes(SeatView view) {
    LikelyHands hands = new LikelyHands();
    hands.look(view, 0);
    Reach reach = view.reach(0);
    int six = TileText.tile("6b");
    RandomStream random = new RandomStream(new StreamKey(1, 2, Purpose.ROLLOUT, 0, 0, 3));
    int count = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      count += reach.hand(hands.draw(random)).total(six) > 0 ? 1 : 0;
    }
    return count;
  }

  private static HandMadeView view(String rack) {
    return new HandMadeView(TWO, rack).exposed(0, "NNNN");
  }

  /**
   * Two hands that differ in nothing: half each. Five standard deviations are 250; a fresh seed
   * would leave them once in 1.7 million (normal approximation, two-sided).
   */
  @Test
  void handsThatDifferInNothing_areAsLikely() {
    assertThat(sixes(view("111999b 999c 1199d"))).isBetween(DRAWS / 2 - 250, DRAWS);
    assertThat(sixes(view("EEEE 999b 999c 999d"))).isBetween(4750, 5250);
  }

  /** One kind thrown counts 0.4: of 1.4 in all the hand has 0.4, or 2,857 of 10,000; +- 226. */
  @Test
  void handThatWantsWhatWasThrown_isLessLikely() {
    int unthrown = sixes(view("EEEE 999b 999c 999d"));
    int thrown = sixes(view("EEEE 999b 999c 999d").thrown("6b"));
    assertThat(thrown).isLessThan(unthrown / 2);
  }

  @Test
  void handWhosePairCannotBeMade_isNeverDrawn() {
    ConcreteHands pairs =
        TestTable.card(
            "{ \"tiles\": \"NNNN 11b 2222c 3333d\", \"value\": 25 }",
            "{ \"tiles\": \"NNNN 66b 7777c 8888d\", \"value\": 25 }");
    HandMadeView view = new HandMadeView(pairs, "666b EEE 999c 9999d").exposed(0, "NNNN");
    assertThat(sixes(view)).isZero();
  }

  @Test
  void noHandLeft_isSaid() {
    HandMadeView view = new HandMadeView(TWO, "EEEE 999b 999c 999d").exposed(0, "SSSS");
    LikelyHands hands = new LikelyHands();
    hands.look(view, 0);
    assertThat(hands.any()).isFalse();
  }
}
