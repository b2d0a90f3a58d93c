package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.TileSet;

/** The worked cases of the rules about winning and scoring, EC-56 to EC-61. */
class EdgeCasesOfWinsTest {
  private static final TurnChoice MAHJONG = TurnChoice.mahjong();

  @Test
  void ec56_tilesOfTwoLines_countForTheDearer() {
    StackedGame game = StackedGame.play().rack(0, "11b J 4444c NNNN RRR");
    game.seat(0).turn(MAHJONG);
    Outcome outcome = game.run();
    assertThat(game.hands().line(outcome.win().line()).id()).isEqualTo("T1");
    assertThat(game.record().end().win().value()).isEqualTo(25);
    assertThat(outcome.points()).containsExactly(150, -50, -50, -50);
  }

  @Test
  void ec57_exposedPung_neverServesAsAKong() {
    StackedGame game =
        StackedGame.play("claims.lineFit", "LENIENT").rack(0, "4c").rack(1, "444c 111b NNNN RRR");
    game.seat(0).discard("4c");
    game.seat(1).claim("4c", ClaimChoice.expose(3, 0)).turn(MAHJONG);
    assertThatThrownBy(game::run)
        .isInstanceOf(IllegalMoveException.class)
        .hasMessageContaining("not a hand of the card");
    StackedGame kong = StackedGame.play().rack(0, "4c").rack(1, "444c 111b NNNN RRR");
    kong.seat(0).discard("4c");
    kong.seat(1).claim("4c", ClaimChoice.mahjong());
    assertThat(kong.run().win().seat()).isEqualTo(1);
  }

  @Test
  void ec58_payments_areThoseOfTheTable() {
    assertThat(wonFromSouth("F 7777d 7777b GGG J")).containsExactly(-30, -60, 120, -30);
    assertThat(wonFromSouth("F 7777d 7777b GGGG")).containsExactly(-60, -120, 240, -60);
    assertThat(drawn("F 7777d 7777b GGG J")).containsExactly(-60, -60, 180, -60);
    assertThat(drawn("F 7777d 7777b GGGG")).containsExactly(-120, -120, 360, -120);
  }

  private static List<Integer> wonFromSouth(String west) {
    StackedGame game = StackedGame.play().rack(1, "F").rack(2, west).draws("3b");
    game.seat(1).discard("F");
    game.seat(2).claim("F", ClaimChoice.mahjong());
    return game.run().points();
  }

  private static List<Integer> drawn(String west) {
    StackedGame game = StackedGame.play().rack(2, west).draws("3b F");
    game.seat(2).turn(MAHJONG);
    return game.run().points();
  }

  @Test
  void ec59_singlesAndPairs_areNotDoubledForHavingNoJoker() {
    StackedGame game = StackedGame.play().rack(0, "11d 33d 44c 66c 88b 99b EE");
    game.seat(0).turn(MAHJONG);
    assertThat(game.run().points()).containsExactly(300, -100, -100, -100);
  }

  @Test
  void ec60_deadPlayer_paysDoubleForASelfDrawnWin() {
    StackedGame game =
        EdgeCasesOfDeadHandsTest.deadSouth("AUTO").draws(EdgeCasesOfDeadHandsTest.DRAWS_WITH_WIN);
    game.seat(0).turn(null, null, null, null, MAHJONG);
    Outcome outcome = game.run();
    assertThat(game.course()).contains("1 is dead").endsWith("0 draws R", "0 wins by draw");
    assertThat(outcome.points()).containsExactly(300, -100, -100, -100);
  }

  @Test
  void ec61_anyFinishedGame_sumsToZeroWithOneWinnerAtMost() {
    TableSetup setup = new TableSetup(new ConcreteHands(MixedTable.card()), TableRules.STANDARD);
    int won = 0;
    for (int number = 0; number < 300; number++) {
      Outcome outcome =
          new Game(setup, MixedTable.players(number), new BalancedBooks())
              .play(Deal.of(61, number, TileSet.USUAL));
      assertThat(outcome.points().stream().mapToInt(Integer::intValue).sum()).isZero();
      long winners = outcome.points().stream().filter(points -> points > 0).count();
      assertThat(winners).isEqualTo(outcome.win() == null ? 0 : 1);
      won += (int) winners;
    }
    assertThat(won).as("won games among them").isBetween(30, 299);
  }
}
