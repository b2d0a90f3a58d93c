package org.tallywall.core.hand;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tallywall.core.TestCards;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.ConcreteHand;

/** All hands of a card in the order of its lines. */
class ConcreteHandsTest {
  @Test
  void hands_ofACard_standInTheOrderOfItsLines() {
    for (int number = 0; number < 20; number++) {
      ConcreteHands hands = new RandomPositions(12, number).card();
      int at = 0;
      for (int line = 0; line < hands.lines(); line++) {
        assertThat(hands.line(line)).isSameAs(hands.card().lines().get(line));
        assertThat(hands.ways(line)).isEqualTo(hands.line(line).hands().size());
        for (ConcreteHand hand : hands.line(line).hands()) {
          assertThat(hands.hand(at)).isEqualTo(hand);
          assertThat(hands.lineOf(at)).isEqualTo(line);
          at++;
        }
      }
      assertThat(hands.size()).isEqualTo(at);
      assertThat(hands.closed().size()).isEqualTo(at);
    }
  }

  @Test
  void handOfTwoLines_countsInEach() {
    Card card = TestCards.testCard();
    ConcreteHands hands = new ConcreteHands(card);
    assertThat(hands.size()).isEqualTo(8);
    assertThat(hands.hand(0)).isEqualTo(hands.hand(7));
    assertThat(hands.lineOf(7)).isEqualTo(7);
  }
}
