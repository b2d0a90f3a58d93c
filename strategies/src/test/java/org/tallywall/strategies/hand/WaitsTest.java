package org.tallywall.strategies.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;

/**
 * What the judge says of hands that wait, with 60 tiles unseen and ten draws to come, against exact
 * sums worked out here. 79 tiles lie face up; the view has 60 tiles in the wall, of which a share
 * of two thirds is counted on, and discards of others are not.
 */
class WaitsTest {
  private static final JudgeSettings TEN_DRAWS = new JudgeSettings(4, 0.5, 10 / 15.0, 0, 0.5);
  private static final int UNSEEN = 60;
  private static final int DRAWS = 10;
  private static final int FIRST_DOT = 9;

  private static double said(String terms, String rack, String lying) {
    ConcreteHands hand =
        TestTable.card("{\"tiles\": \"1111b 2222b 333b 44b 5b\", \"value\": 25" + terms + "}");
    HandMadeView view = new HandMadeView(hand, rack).thrown(lying);
    int kind = FIRST_DOT;
    for (int more = unseen(view) - UNSEEN; more > 0; more--) {
      while (view.unseen(kind) == 0) {
        kind++;
      }
      view.thrown(Tile.symbol(kind));
    }
    assertThat(unseen(view)).isEqualTo(UNSEEN);
    RackJudge judge = new RackJudge(TEN_DRAWS);
    judge.look(view, 2, 0);
    assertThat(judge.bestHand()).isZero();
    return judge.bestChance();
  }

  private static int unseen(HandMadeView view) {
    int unseen = 0;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      unseen += view.unseen(kind);
    }
    return unseen;
  }

  /** One tile away, waiting for tiles of one kind: exact. The figures were worked out before. */
  @ParameterizedTest
  @CsvSource({
    "1111b 2222b 333b 44b, 5b, 3, 0.427235534775",
    "1111b 2222b 333b 44b, 55b, 2, 0.307909604520",
    "1111b 2222b 333b 4b 5b, 4b, 2, 0.307909604520",
    "1111b 2222b 333b 44b, 555b, 1, 0.166666666667"
  })
  void oneAway_waitOfOneKind_isExact(String rack, String lying, int outs, double figure) {
    double exact = 1 - Ways.none(outs, DRAWS, UNSEEN);
    assertThat(exact).isCloseTo(figure, within(6e-13));
    assertThat(said(", \"jokers\": false", rack, lying)).isCloseTo(exact, within(1e-12));
  }

  /**
   * One tile away, any of two kinds: a third 3b, of which two are left, or one of the eight jokers.
   * The judge takes the kinds to be independent, where every draw that is no joker leaves more room
   * for a 3b: it says a little too little.
   */
  @Test
  void oneAway_naturalOrJoker_isALittleLessThanExact() {
    double exact = 1 - Ways.none(2 + 8, DRAWS, UNSEEN);
    double said = said("", "1111b 2222b 33b 44b 5b", "");
    assertThat(exact - said).isBetween(0.001, 0.02);
  }

  /**
   * Two tiles away, 4b with three outs and 5b with two: both come with 1 − P(no 4b) − P(no 5b) +
   * P(neither). The judge multiplies, 0.008 too much: two tiles cannot come in one draw.
   */
  @Test
  void twoAway_twoKindsOfNaturals_areTakenAsIndependent() {
    double four = 1 - Ways.none(3, DRAWS, UNSEEN);
    double five = 1 - Ways.none(2, DRAWS, UNSEEN);
    double both = four + five - (1 - Ways.none(5, DRAWS, UNSEEN));
    assertThat(both).isCloseTo(0.123088990741, within(6e-13));
    double said = said(", \"jokers\": false", "1111b 2222b 333b 4b 9d", "55b");
    assertThat(said).isCloseTo(four * five, within(1e-12));
    assertThat(said - both).isBetween(0.0, 0.0086);
  }

  /** Two tiles away, both of one kind: exact. */
  @Test
  void twoAway_twoOfOneKind_areExact() {
    double exact = Ways.atLeast(2, 4, DRAWS, UNSEEN);
    assertThat(said(", \"jokers\": false", "1111b 2222b 333b 5b 9d", ""))
        .isCloseTo(exact, within(1e-12));
  }
}
