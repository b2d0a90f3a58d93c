package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;

/** How the nearest player decides between equals, and where a table's switches limit it. */
class NearestPlayerTiesTest {
  /** Two lines without a tile in common. */
  private static final ConcreteHands TWO_LINES =
      TestTable.card(
          "{ \"tiles\": \"111b 222b 3333b 44b 55b\", \"value\": 25 }",
          "{ \"tiles\": \"111c 222c 3333c 44c 55c\", \"value\": 25 }");

  private final NearestPlayer player = new NearestPlayer();

  private static RandomStream numbers(int decision) {
    return new RandomStream(new StreamKey(1, 2, Purpose.DECISION, 1, 0, decision));
  }

  private String discard(SeatView view) {
    return player.turn(view, numbers(1)) instanceof TurnChoice.Discard thrown
        ? Tile.symbol(thrown.tile())
        : "no discard";
  }

  @Test
  void aim_ofLinesAlikeInAll_isTheFirst() {
    String first = "{ \"tiles\": \"111b 222b 333b 444b FF\", \"value\": 25 }";
    String second = "{ \"tiles\": \"111c 222c 333c 444c FF\", \"value\": 30 }";
    String third = "{ \"tiles\": \"111d 222d 333d 444d FF\", \"value\": 30 }";
    ConcreteHands hands = TestTable.card(first, second, third);
    assertThat(player.aim(new HandMadeView(hands, "FF NN EE WW SS RG0"))).isEqualTo(1);
  }

  @Test
  void discard_sparesLeastWhatTheLineAimedAtWantsThenOthersAsNearThenOneFurther() {
    ConcreteHands hands =
        TestTable.card(
            "{ \"tiles\": \"111b 222b 3333b 44b 55b\", \"value\": 50 }",
            "{ \"tiles\": \"111b 222b 3333b 44b 66b\", \"value\": 25 }",
            "{ \"tiles\": \"111b 222b 3333b 77b 88b\", \"value\": 25 }");
    assertThat(discard(new HandMadeView(hands, "111b 222b 333b 4b 5b 6b 7b J")))
        .as("one further")
        .isEqualTo("7b");
    assertThat(discard(new HandMadeView(hands, "111b 222b 333b 4b 5b 6b JJ")))
        .as("as near")
        .isEqualTo("6b");
    assertThat(discard(new HandMadeView(hands, "111b 222b 333b 4b 6b 7b N J")))
        .as("wanted by none")
        .isEqualTo("N");
  }

  /** All are strangers alike: the most in view, then the first in the order of kinds. */
  @Test
  void discard_ofStrangersAlike_countsExposuresAsInView() {
    assertThat(discard(new HandMadeView(TWO_LINES, "111b 222b 333b 44b W S R"))).isEqualTo("W");
    assertThat(discard(new HandMadeView(TWO_LINES, "111b 222b 333b 44b W S R").thrown("SS R")))
        .isEqualTo("S");
    HandMadeView shown = new HandMadeView(TWO_LINES, "111b 222b 333b 44b W S R").thrown("SS");
    assertThat(discard(shown.exposed(2, "RRR"))).isEqualTo("R");
  }

  @ParameterizedTest
  @CsvSource({
    "11b 22b 3333b 44b 55b N,   N,     2",
    "11b 22b 3333b 4b 55b N E,  N E,   1",
    "11b 22b 333b 4b 55b N E W, N E W, 0",
    "111b 222b 3333b 4b 55b,    '',    3"
  })
  void pass_whereBlindIsAllowed_isOfStrangersOnly(String rack, String own, int blind) {
    PassChoice choice =
        player.pass(new HandMadeView(TWO_LINES, rack), PassStep.RIGHT_2, numbers(1));
    assertThat(choice).isEqualTo(new PassChoice(TileText.rack(own).tiles(), blind));
  }

  @Test
  void pass_ofARackOfJokers_holdsNaturalsOnly() {
    HandMadeView view = new HandMadeView(TWO_LINES, "JJJJJJJJ 1b 2b 3b 4b 5b");
    PassChoice choice = player.pass(view, PassStep.RIGHT_1, numbers(1));
    assertThat(choice.own()).hasSize(3).doesNotContain(Tile.JOKER);
  }

  @Test
  void claim_ofADiscardedJoker_isMadeForMahjongOnly() {
    TableRules rules = TableRules.STANDARD.with("joker.discardClaimable", true);
    HandMadeView near = new HandMadeView(TWO_LINES, "11b 222b 333b 44b 5b N E", rules);
    assertThat(player.claim(near.offered("J"), numbers(1))).isEqualTo(ClaimChoice.nothing());
    HandMadeView waiting = new HandMadeView(TWO_LINES, "111b 222b 333b 44b 55b", rules);
    assertThat(player.claim(waiting.offered("J"), numbers(1))).isEqualTo(ClaimChoice.mahjong());
  }

  @Test
  void joker_isLeftWhereTheTableForbidsTheExchange() {
    String rack = "111b 222b 33b 44b 5b 6b N E";
    HandMadeView free = new HandMadeView(TWO_LINES, rack).exposed(2, "66bJ");
    assertThat(player.turn(free, numbers(1))).isEqualTo(TurnChoice.exchange(2, 0));
    TableRules off = TableRules.STANDARD.with("joker.exchange", "OFF");
    HandMadeView barred = new HandMadeView(TWO_LINES, rack, off).exposed(2, "66bJ");
    assertThat(discard(barred)).isEqualTo("6b");
  }

  @Test
  void answers_neverDrawLots() {
    HandMadeView view = new HandMadeView(TWO_LINES, "1b 2b 3b 1c 2c 3c NN EE WW R");
    HandMadeView turn = new HandMadeView(TWO_LINES, "1b 2b 3b 1c 2c 3c NN EE WW R G");
    PassChoice pass = player.pass(view, PassStep.RIGHT_1, numbers(0));
    TurnChoice thrown = player.turn(turn, numbers(0));
    for (int decision = 1; decision < 200; decision++) {
      assertThat(player.pass(view, PassStep.RIGHT_1, numbers(decision))).isEqualTo(pass);
      assertThat(player.turn(turn, numbers(decision))).isEqualTo(thrown);
    }
  }
}
