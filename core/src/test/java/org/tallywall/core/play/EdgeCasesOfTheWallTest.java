package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.record.GameEvent;

/** The worked cases of the rules about the end of the wall, EC-66 to EC-70. */
class EdgeCasesOfTheWallTest {
  private static final String HOT = "PAY_ALL_IF_UNACCOUNTED";

  @Test
  void ec66_lastTileDiscardedUnclaimed_isAWallGameWithoutPayments() {
    StackedGame game = StackedGame.play();
    Outcome outcome = game.run();
    assertThat(outcome.how()).isEqualTo(Outcome.How.WALL_GAME);
    assertThat(outcome.points()).containsExactly(0, 0, 0, 0);
    assertThat(outcome.wall()).isZero();
    assertThat(game.course()).endsWith("wall game");
    assertThat(game.events(GameEvent.Discard.class)).hasSize(100);
  }

  /** 1.3.3: without a claim South, West and North draw 25 tiles each, East 24. */
  @Test
  void ec66_gameWithoutClaims_hasTheDrawsOfTheRules() {
    StackedGame game = StackedGame.play();
    game.run();
    List<GameEvent.Draw> draws = game.events(GameEvent.Draw.class);
    for (int seat = 0; seat < 4; seat++) {
      int drawer = seat;
      assertThat(draws.stream().filter(draw -> draw.seat() == drawer).count())
          .isEqualTo(seat == 0 ? 24 : 25);
    }
  }

  @Test
  void ec67_lastDiscardClaimedForAnExposure_hasOneMoreDiscard() {
    StackedGame game = StackedGame.play().rack(0, "444c 3b").lastDraws("4c");
    game.seat(0).claim("4c", ClaimChoice.expose(4, 0));
    Outcome outcome = game.run();
    int size = game.course().size();
    assertThat(game.course().subList(size - 5, size - 2))
        .containsExactly("3 draws 4c", "3 throws 4c", "0 claims 4c for 4");
    assertThat(game.course().get(size - 2)).startsWith("0 throws");
    assertThat(game.course().get(size - 1)).isEqualTo("wall game");
    assertThat(outcome.points()).containsExactly(0, 0, 0, 0);
  }

  @Test
  void ec67_discardAfterTheLastClaim_mayBeClaimedToo() {
    StackedGame game =
        StackedGame.play().rack(0, "444c R").rack(2, "111b JJJJ NNNN RR").lastDraws("4c");
    game.seat(0).claim("4c", ClaimChoice.expose(4, 0)).discard("-");
    game.seat(2).claim("R", ClaimChoice.mahjong());
    for (int turn = 0; turn < 24; turn++) {
      game.seat(0).discard("-");
    }
    game.seat(0).discard("R");
    assertThat(game.run().win().from()).isZero();
    assertThat(game.course()).endsWith("0 throws R", "2 wins by discard from 0");
  }

  @Test
  void ec68_lastTileThatCompletesTheHand_isASelfDrawnWinWithoutBonus() {
    StackedGame game = StackedGame.play().rack(3, "11b J 4444c NNNN RR").lastDraws("R");
    for (int turn = 0; turn < 24; turn++) {
      game.seat(3).discard("-");
    }
    game.seat(3).turn(TurnChoice.mahjong());
    Outcome outcome = game.run();
    assertThat(outcome.wall()).isZero();
    assertThat(outcome.points()).containsExactly(-50, -50, -50, 150);
  }

  /** East waits for R, of which North, who throws the last tile, has seen one other. */
  private static StackedGame lastRed(StackedGame game) {
    game.rack(0, "11b JJ 444c NNNN RR 3b").rack(1, "R").lastDraws("R");
    game.seat(0).discard("3b").claim("R", ClaimChoice.nothing());
    game.seat(0).claim("R", ClaimChoice.mahjong());
    game.seat(1).discard("R");
    return game;
  }

  @Test
  void ec69_hotTileOfTheLastWall_isPaidByItsDiscarderAlone() {
    StackedGame game = lastRed(StackedGame.play("wall.hot", HOT));
    assertThat(game.run().points()).containsExactly(100, 0, 0, -100);
    assertThat(lastRed(StackedGame.play()).run().points()).containsExactly(100, -25, -25, -50);
  }

  @Test
  void ec69_tileWhoseOtherCopiesAreInView_isNotHot() {
    Outcome hot = lastRedAfter("4b");
    assertThat(hot.points()).containsExactly(100, 0, 0, -100);
    Outcome seen = lastRedAfter("R");
    assertThat(seen.points()).containsExactly(100, -25, -25, -50);
  }

  /** East waits for R with jokers in its place; three reds may be thrown before the last one. */
  private static Outcome lastRedAfter(String second) {
    StackedGame game = StackedGame.play("wall.hot", HOT);
    game.rack(0, "111b JJJJ 44c NNNN 3b").rack(1, "R").rack(2, "R R").lastDraws("R");
    game.seat(0).discard("3b");
    for (int time = 0; time < (second.equals("R") ? 3 : 2); time++) {
      game.seat(0).claim("R", ClaimChoice.nothing());
    }
    game.seat(0).claim("R", ClaimChoice.mahjong());
    game.seat(1).discard("R");
    game.seat(2).discard(second.equals("R") ? "R R" : "R");
    return game.run();
  }

  @Test
  void ec69_hotTileOfAnEarlierWall_isPaidAsUsual() {
    StackedGame game =
        StackedGame.play("wall.hot", HOT).rack(0, "R").rack(2, "11b J 4444c NNNN RR");
    game.seat(0).discard("R");
    game.seat(2).claim("R", ClaimChoice.mahjong());
    assertThat(game.run().points()).containsExactly(-50, -25, 100, -25);
  }

  @Test
  void ec70_coldWall_offersNoMahjongClaim() {
    StackedGame game = lastRed(StackedGame.play("wall.cold", "NO_MAHJONG_CLAIM"));
    Outcome outcome = game.run();
    assertThat(outcome.how()).isEqualTo(Outcome.How.WALL_GAME);
    assertThat(game.seat(0).asked).containsOnlyOnce("claim R");
    int last = game.course().lastIndexOf("3 throws R");
    assertThat(game.breachOf(last + 1, win(0, 3)).message()).contains("mahjong may not be claimed");
  }

  /** Nor can the tile be laid open and mahjong declared in the same turn. */
  @Test
  void ec70_coldWall_offersNoExposureThatCompletesTheHand() {
    StackedGame game =
        StackedGame.play("wall.cold", "NO_MAHJONG_CLAIM")
            .rack(0, "111b 444c NNNN RRR 3b")
            .lastDraws("4c");
    game.seat(0).discard("3b").claim("4c", ClaimChoice.expose(4, 0));
    assertThat(game.run().how()).isEqualTo(Outcome.How.WALL_GAME);
    assertThat(game.seat(0).asked).doesNotContain("claim 4c");
    StackedGame other =
        StackedGame.play("wall.cold", "NO_MAHJONG_CLAIM").rack(0, "444c 3b").lastDraws("4c");
    other.seat(0).claim("4c", ClaimChoice.expose(4, 0));
    other.run();
    assertThat(other.course()).contains("0 claims 4c for 4");
  }

  private static GameEvent win(int seat, int from) {
    return new GameEvent.Mahjong(seat, "discard", from, new GameEvent.Losers(List.of(), List.of()));
  }
}
