package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.TestCards;
import org.tallywall.core.record.GameEvent;

/** What each switch about winning, dead hands and payments changes in a game. */
class SwitchesOfWinsTest {
  private static final TurnChoice MAHJONG = TurnChoice.mahjong();
  private static final int T8 = 7;

  @ParameterizedTest
  @CsvSource({"true, 25", "false, 20"})
  void autoBestLine_decidesWhetherTheNamedLineCounts(boolean best, int value) {
    StackedGame game = StackedGame.play("win.autoBestLine", best).rack(0, "11b J 4444c NNNN RRR");
    game.seat(0).turn(new TurnChoice.Mahjong(T8));
    assertThat(game.run().points()).containsExactly(6 * value, -2 * value, -2 * value, -2 * value);
    StackedGame claim =
        StackedGame.play("win.autoBestLine", best).rack(0, "R").rack(2, "11b J 4444c NNNN RR");
    claim.seat(0).discard("R");
    claim.seat(2).claim("R", new ClaimChoice.Mahjong(T8));
    assertThat(claim.run().points()).containsExactly(-2 * value, -value, 4 * value, -value);
  }

  @Test
  void mayDecline_false_declaresWithoutAsking() {
    StackedGame dealt = StackedGame.play("win.mayDecline", false).rack(0, "FF 7777d 7777b GGGG");
    assertThat(dealt.run().win().by()).isEqualTo(WinBy.DEAL);
    assertThat(dealt.seat(0).asked).isEmpty();
    StackedGame drawn =
        StackedGame.play("win.mayDecline", false).rack(1, "F 7777d 7777b GGGG").draws("F");
    assertThat(drawn.run().win().by()).isEqualTo(WinBy.DRAW);
    assertThat(drawn.seat(1).asked).isEmpty();
    StackedGame claimed =
        StackedGame.play("win.mayDecline", false).rack(0, "F").rack(1, "F 7777d 7777b GGGG");
    claimed.seat(0).discard("F");
    assertThat(claimed.run().win().by()).isEqualTo(WinBy.DISCARD);
    assertThat(claimed.seat(1).asked).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"SELF_DRAWN, 50", "SINGLE, 25"})
  void exchangePaidAs_decidesWhatAnExchangePays(String value, int each) {
    StackedGame game = StackedGame.play("win.exchangePaidAs", value);
    game.rack(0, "7d").rack(1, "77d J 4c").rack(2, "11b 7d 444c NNNN RRR");
    game.seat(0).discard("7d");
    game.seat(1).claim("7d", ClaimChoice.expose(4, 1)).discard("4c");
    game.seat(2).claim("4c", ClaimChoice.expose(4, 0)).turn(TurnChoice.exchange(1, 0), MAHJONG);
    assertThat(game.run().points()).containsExactly(-each, -each, 3 * each, -each);
  }

  @ParameterizedTest
  @CsvSource({"VOID, VOID, 0", "WALL, WALL_GAME, 7"})
  void threeDead_decidesWhatTheGameIs(String value, Outcome.How how, int points) {
    StackedGame game =
        StackedGame.on(
            TestCards.testCard(),
            StackedGame.noPasses()
                .with("dead.calls", "AUTO")
                .with("claims.lineFit", "LENIENT")
                .with("dead.threeDead", value)
                .with("score.wallGame", 7));
    EdgeCasesOfDeadHandsTest.threeDead(game);
    Outcome outcome = game.run();
    assertThat(outcome.how()).isEqualTo(how);
    assertThat(outcome.points()).as("to the live player").containsExactly(points, 0, 0, 0);
  }

  /** Four hands that nobody can make any more: the last live player is called by nobody (6.2.1). */
  @Test
  void deadCalls_leaveTheLastPlayerAlone() {
    StackedGame game =
        StackedGame.on(
            StackedGameCards.lines("FF 7777d 7777b GGGG"),
            StackedGame.noPasses().with("dead.calls", "AUTO"));
    game.rack(0, "FFF").rack(1, "FF").rack(2, "FF").rack(3, "F").draws("3b 4b 5b 3b 4b 5b");
    game.seat(0).discard("F F F");
    game.seat(1).discard("F F");
    game.seat(2).discard("F F");
    game.seat(3).discard("F");
    Outcome outcome = game.run();
    assertThat(outcome.how()).isEqualTo(Outcome.How.VOID);
    assertThat(game.events(GameEvent.Dead.class)).hasSize(3);
  }

  @Test
  void wallGame_paysEveryLivePlayer() {
    assertThat(StackedGame.play("score.wallGame", 5).run().points()).containsExactly(5, 5, 5, 5);
    assertThat(StackedGame.play("score.wallGame", -5).run().points())
        .containsExactly(-5, -5, -5, -5);
  }

  @Test
  void diceDoubles_doubleAllPayments() {
    StackedGame doubled =
        StackedGame.play("score.diceDoubles", true).rack(0, "11b J 4444c NNNN RRR").dice(4, 4);
    doubled.seat(0).turn(MAHJONG);
    assertThat(doubled.run().points()).containsExactly(300, -100, -100, -100);
    StackedGame unlike =
        StackedGame.play("score.diceDoubles", true).rack(0, "11b J 4444c NNNN RRR").dice(4, 3);
    unlike.seat(0).turn(MAHJONG);
    assertThat(unlike.run().points()).containsExactly(150, -50, -50, -50);
  }

  /** 8.9: a kong of 7d left one line only when South threw the winning flower. */
  @Test
  void oneHandRule_letsTheDiscarderOfAnObviousTilePayForAll() {
    assertThat(obvious(true)).containsExactly(0, 0, -120, 120);
    assertThat(obvious(false)).containsExactly(-30, -30, -60, 120);
  }

  private static List<Integer> obvious(boolean rule) {
    StackedGame game = StackedGame.play("score.oneHandRule", rule);
    game.rack(0, "7d").rack(2, "F").rack(3, "F 777d 7777b GGG J 3b").draws("3b 4b 4b");
    game.seat(0).discard("7d");
    game.seat(3).claim("7d", ClaimChoice.expose(4, 0)).discard("3b");
    game.seat(3).claim("F", ClaimChoice.mahjong());
    game.seat(2).discard("F");
    return game.run().points();
  }

  /** Two lines were left (T1 and T8): nothing obvious about it. */
  @Test
  void oneHandRule_doesNotCountWhereTwoLinesWereLeft() {
    StackedGame game = StackedGame.play("score.oneHandRule", true);
    game.rack(0, "N").rack(2, "R").rack(3, "11b J NNN 4444c RR 3b").draws("3b 4b 4b");
    game.seat(0).discard("N");
    game.seat(3).claim("N", ClaimChoice.expose(4, 0)).discard("3b");
    game.seat(3).claim("R", ClaimChoice.mahjong());
    game.seat(2).discard("R");
    assertThat(game.run().points()).containsExactly(-25, -25, -50, 100);
  }

  /** What the winner lays open with the winning tile itself was no warning. */
  @Test
  void oneHandRule_looksAtTheExposuresBeforeTheDiscard() {
    StackedGame game = StackedGame.play("score.oneHandRule", true);
    game.rack(0, "7d").rack(3, "FF 777d 7777b GGG J");
    game.seat(0).discard("7d");
    game.seat(3).claim("7d", ClaimChoice.expose(4, 0)).turn(MAHJONG);
    assertThat(game.run().points()).containsExactly(-60, -30, -30, 120);
    assertThat(game.course()).endsWith("3 wins by discard from 0");
  }

  /** Nor does it count less when that winner lays the tile open and declares in the same turn. */
  @Test
  void oneHandRule_countsForAWinnerWhoLaysTheTileOpenFirst() {
    StackedGame game = StackedGame.play("score.oneHandRule", true);
    game.rack(0, "7d").rack(2, "7b").rack(3, "FF 777d 777b GGG J 3b").draws("3b 4b 4b");
    game.seat(0).discard("7d");
    game.seat(3).claim("7d", ClaimChoice.expose(4, 0)).discard("3b");
    game.seat(3).claim("7b", ClaimChoice.expose(4, 0)).turn(MAHJONG);
    game.seat(2).discard("7b");
    assertThat(game.run().points()).containsExactly(0, 0, -120, 120);
    assertThat(game.course()).endsWith("3 claims 7b for 4", "3 wins by discard from 2");
  }

  /** Of lines that pay alike, the first on the card counts. */
  @Test
  void linesThatPayAlike_countInTheOrderOfTheCard() {
    StackedGame game =
        StackedGame.on(
            StackedGameCards.lines("111b 4444c NNNN RRR", "111b 4444c NNNN RRR"),
            StackedGame.noPasses());
    game.rack(0, "111b 4444c NNNN RRR").seat(0).turn(MAHJONG);
    assertThat(game.run().win().line()).isZero();
  }

  @Test
  void jokerlessMultiplier_one_paysNoMoreWithoutJokers() {
    StackedGame game = StackedGame.play("score.jokerless", 1).rack(0, "111b 4444c NNNN RRR");
    game.seat(0).turn(MAHJONG);
    assertThat(game.run().points()).containsExactly(150, -50, -50, -50);
  }

  @Test
  void jokerlessExcludes_none_doublesPairsToo() {
    StackedGame game =
        StackedGame.play("score.jokerlessExcludes", "NONE").rack(0, "11d 33d 44c 66c 88b 99b EE");
    game.seat(0).turn(MAHJONG);
    assertThat(game.run().points()).containsExactly(600, -200, -200, -200);
  }
}
